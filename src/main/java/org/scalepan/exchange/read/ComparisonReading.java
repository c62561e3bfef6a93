package org.scalepan.exchange.read;

import java.util.List;
import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.compare.Comparison.ComparisonQuestion;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;

/** Reads the question of a comparison: products, what they are set against, comparison basis and sampling. */
public final class ComparisonReading {
    public static final int MOST_PRODUCTS = 20;
    public static final List<String> PARAMETERS = ComparisonBasisReading.with("products", "indicator", "against");

    private ComparisonReading() {}

    /** The question; empty after an error, which is recorded in the parameters. */
    public static Optional<ComparisonQuestion> read(Library library, Input parameters) {
        ProductReading products = new ProductReading(library, parameters);
        List<ProductForm> asked = products.some("products", MOST_PRODUCTS);
        ComparisonBasisReading reading = new ComparisonBasisReading(library, parameters);
        Indicator indicator = reading.indicator("indicator", "ghg");
        Optional<ProductForm> against = products.one("against");
        ComparisonBasis basis = reading.basis(indicator);
        Sampling sampling = reading.sampling();
        reading.afford(sampling, asked.size());
        return against.filter(found -> parameters.faults().isEmpty())
                .map(found -> new ComparisonQuestion(asked, found, basis, sampling));
    }
}
