package org.scalepan;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.exchange.read.ComparisonReading;
import org.scalepan.exchange.rows.BulkQuestion;
import org.scalepan.factors.Library;
import org.scalepan.factors.loading.FactorFiles;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;
import org.scalepan.input.Input;
import org.scalepan.production.practice.ModelledFarms;

/**
 * The factor library, ready to answer questions in another program, without HTTP. It is read once and does not change; any thread may ask
 * it. An answer is a pure function of the question and the library, whose content {@link #digest} names.
 *
 * <p>Questions have the parameters of the service ({@code POST /v1/footprints}, {@code GET /v1/comparison}), under the same names. An
 * unusable library or question throws, because nothing can be asked with it; what is wrong with one row is a value ({@link RowAnswer}).
 */
public final class AnswerLibrary {
    private final Library library;

    private AnswerLibrary(Library library) {
        this.library = library;
    }

    /** The library that travels in the jar. */
    public static AnswerLibrary bundled() {
        return of(Optional.empty());
    }

    /**
     * The library of the jar with your own rows over it, as {@code --factors} does.
     *
     * @param own a folder, or a zip file of its files
     * @throws RefusedInput with every fault of the library
     * @throws IOException when the zip file cannot be read
     */
    public static AnswerLibrary with(Path own) throws IOException {
        if (Files.isDirectory(own) || Files.notExists(own)) {
            return of(Optional.of(new FactorFiles.Folder(own)));
        }
        try (FileSystem zip = FileSystems.newFileSystem(own)) {
            return of(Optional.of(new FactorFiles.Folder(zip.getPath("/"))));
        }
    }

    private static AnswerLibrary of(Optional<FactorFiles> own) {
        LibraryLoad load = LibraryLoader.load(new FactorFiles.Bundled(), own);
        if (load instanceof LibraryLoad.Broken broken) {
            throw new RefusedInput(broken.faults().stream().map(String::valueOf).toList());
        }
        Library library = ((LibraryLoad.Loaded) load).library();
        List<String> farms = ModelledFarms.of(library).faults();
        if (!farms.isEmpty()) {
            throw new RefusedInput(farms);
        }
        return new AnswerLibrary(library);
    }

    /** The version of the dataset, followed by {@code +own} when rows of your own are over it. */
    public String version() {
        return library.version().version();
    }

    /** The first 16 hex digits of the SHA-256 over the content of the library: what a result is cited with. */
    public String digest() {
        return library.version().digest();
    }

    /**
     * A question to many farms and herds.
     *
     * @param parameters those of {@code POST /v1/footprints}: {@code indicators}, {@code per}, {@code boundary} ...
     * @throws RefusedInput with every error of the question
     */
    public RowQuestion rows(Map<String, String> parameters) {
        Input input = Input.query(parameters);
        input.onlyKnown(BulkQuestion.PARAMETERS);
        Optional<BulkQuestion> question = BulkQuestion.read(library, input);
        RefusedInput.refuseIfWrong(input);
        return new RowQuestion(question.orElseThrow());
    }

    /**
     * Products beside a reference: the figure of each, and how many times less it is.
     *
     * @param parameters those of {@code GET /v1/comparison}: {@code products}, {@code against}, {@code indicator}, {@code per} ...
     * @throws RefusedInput with every error of the question
     */
    public List<ComparedFigure> compare(Map<String, String> parameters) {
        Input input = Input.query(parameters);
        input.onlyKnown(ComparisonReading.PARAMETERS);
        Optional<Comparison.ComparisonQuestion> question = ComparisonReading.read(library, input);
        RefusedInput.refuseIfWrong(input);
        return ComparedFigure.of(Comparison.of(library, question.orElseThrow()));
    }
}
