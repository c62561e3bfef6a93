package org.scalepan.web.bulk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scalepan.web.http.Limits;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The folder in which rows wait in temporary files until they are computed. A file loses its name as soon as it is open, where the
 * system allows that, so that nothing of it is left when the process is killed. Where it keeps its name, that holds the number of the
 * process, and the next start removes what a process that is gone has left.
 */
public final class SpoolFolder {
    private static final Logger LOG = LoggerFactory.getLogger(SpoolFolder.class);
    private static final String PREFIX = "scalepan-rows-";
    private static final Pattern NAME = Pattern.compile(Pattern.quote(PREFIX) + "(\\d{1,18})-[0-9a-f]{1,16}\\.tmp");
    /** With less, not even a small table finds a place. */
    private static final long LEAST_FREE = 1_048_576;

    private static final Problem NO_PLACE = Problem.plain(
            503,
            "no-place",
            "No place for rows",
            "rows wait in a temporary file until they are computed, and the service has no place for one now; ask its operator to see to"
                    + " the temporary folder, send fewer rows, or ask for each farm alone with POST /v1/footprint");

    private final Path folder;
    private final AtomicBoolean told = new AtomicBoolean();

    public SpoolFolder(Path folder) {
        this.folder = folder;
    }

    /** The temporary folder of the system, or as {@code -Djava.io.tmpdir} names it. */
    public static SpoolFolder ofSystem() {
        return new SpoolFolder(Path.of(System.getProperty("java.io.tmpdir")));
    }

    /** Why no row could ever wait here; empty when the folder can be used. */
    public Optional<String> fault() {
        if (!Files.exists(folder)) {
            return Optional.of("the temporary folder " + folder + " does not exist");
        }
        if (!Files.isDirectory(folder)) {
            return Optional.of(folder + ", named as the temporary folder, is not a folder");
        }
        return Files.isWritable(folder)
                ? Optional.empty()
                : Optional.of("the temporary folder " + folder + " cannot be written to");
    }

    /** Whether the folder has no space left for rows, which may pass. */
    public boolean isFull() {
        return free() < LEAST_FREE;
    }

    private long free() {
        try {
            return Files.getFileStore(folder).getUsableSpace();
        } catch (IOException e) {
            // Told as a fault of the folder where it is one.
            return Long.MAX_VALUE;
        }
    }

    /** What the operator should know when the service starts; leftovers are removed before. */
    public List<String> findings() {
        List<String> findings = new ArrayList<>();
        String todo =
                "; POST /v1/footprints will be refused until it can be used: name another with -Djava.io.tmpdir=DIR";
        fault().or(this::notUsable).ifPresent(fault -> findings.add(fault + todo));
        if (findings.isEmpty()) {
            removeLeftovers();
            if (free() < Limits.ROWS_BYTES) {
                findings.add("the temporary folder " + folder + " has " + free() / 1_048_576
                        + " MB free; a body of POST /v1/footprints may have " + Limits.ROWS_BYTES / 1_048_576 + " MB");
            }
        }
        return List.copyOf(findings);
    }

    /** Rights alone do not tell of a quota or of a system that is mounted for reading only. */
    private Optional<String> notUsable() {
        try (SpoolFile tried = create()) {
            tried.channel().write(java.nio.ByteBuffer.wrap(new byte[] {0}));
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of("no file can be written in the temporary folder " + folder);
        }
    }

    /**
     * A new file, readable by this process's user alone.
     *
     * @param named where it still has a name, which must be deleted with it
     */
    record SpoolFile(FileChannel channel, Optional<Path> named) implements AutoCloseable {
        @Override
        public void close() throws IOException {
            channel.close();
            if (named.isPresent()) {
                Files.deleteIfExists(named.get());
            }
        }
    }

    SpoolFile create() throws IOException {
        Path path = folder.resolve(PREFIX + ProcessHandle.current().pid() + "-"
                + Long.toHexString(UUID.randomUUID().getMostSignificantBits()) + ".tmp");
        FileChannel channel = FileChannel.open(
                path,
                EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE),
                ownersOnly());
        try {
            Files.deleteIfExists(path);
            return new SpoolFile(channel, Optional.empty());
        } catch (IOException keptWhileOpen) {
            return new SpoolFile(channel, Optional.of(path));
        }
    }

    private FileAttribute<?>[] ownersOnly() {
        boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        return posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    /** The refusal of rows when no file could be written; the log has it once until it works again. */
    ProblemException refused(IOException why) {
        if (!told.getAndSet(true)) {
            LOG.warn(
                    "rows cannot wait: {}",
                    fault().orElseGet(() -> "the temporary folder " + folder
                            + (isFull() ? " is full" : " cannot be used (" + why.getMessage() + ")")));
        }
        return new ProblemException(NO_PLACE);
    }

    void worked() {
        told.set(false);
    }

    private void removeLeftovers() {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, PREFIX + "*.tmp")) {
            for (Path file : files) {
                if (isLeftover(file)) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException e) {
            LOG.warn("what an earlier process left in {} could not be removed: {}", folder, e.getMessage());
        }
    }

    private static boolean isLeftover(Path file) throws IOException {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        if (!name.matches() || !Files.isRegularFile(file) || !Files.isWritable(file)) {
            return false;
        }
        long process = Long.parseLong(name.group(1));
        if (process != ProcessHandle.current().pid()) {
            return ProcessHandle.of(process).filter(ProcessHandle::isAlive).isEmpty();
        }
        // In a container every process may have the same number.
        Instant begun = ProcessHandle.current().info().startInstant().orElse(Instant.MIN);
        return Files.getLastModifiedTime(file).toInstant().isBefore(begun);
    }
}
