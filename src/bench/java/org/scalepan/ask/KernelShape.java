package org.scalepan.ask;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.HarmonisationStep;
import org.scalepan.literature.Harmonised;

/**
 * Writes the model behind the question of all products, so that the reference in NumPy draws the same: for every finding the factors it
 * multiplies, each with its id, median and standard deviation on the log scale.
 */
public final class KernelShape {
    private KernelShape() {}

    /** @param args the file to write */
    public static void main(String[] args) throws java.io.IOException {
        ObjectMapper json = new ObjectMapper();
        ObjectNode shape = json.createObjectNode();
        Comparison.ComparisonQuestion question = AllProducts.question(0, 10_000, 1);
        shape.put("draws", 10_000);
        shape.set("reference", product(json, question.against()));
        ArrayNode products = shape.putArray("products");
        question.products().forEach(item -> products.add(product(json, item)));
        json.writeValue(Path.of(args[0]).toFile(), shape);
    }

    private static ArrayNode product(ObjectMapper json, ProductForm item) {
        PublishedEstimate estimate = Estimating.estimate(
                AllProducts.LIBRARY,
                item,
                AllProducts.basis(),
                new Sampling(0.9, 1000, 1),
                new CommonRandomNumbers(1, 1000));
        ArrayNode studies = json.createArrayNode();
        ((Evidence.PooledEvidence) estimate.evidence()).studies().forEach(study -> {
            ArrayNode findings = studies.addArray();
            study.findings().forEach(finding -> findings.add(factors(json, finding)));
        });
        return studies;
    }

    private static ArrayNode factors(ObjectMapper json, Harmonised finding) {
        ArrayNode factors = json.createArrayNode();
        factor(
                factors,
                finding.result().finding(),
                finding.reading().median(),
                finding.reading().lnSd());
        for (HarmonisationStep step : finding.steps()) {
            if (step instanceof HarmonisationStep.ToUnit unit && unit.step() instanceof ChainStep.PublishedStep published) {
                factor(
                        factors,
                        published.row().id(),
                        published.multiplier(),
                        published.factor().reading().lnSd());
            }
        }
        return factors;
    }

    private static void factor(ArrayNode factors, String id, double median, double lnSd) {
        factors.addArray().add(id).add(median).add(lnSd);
    }
}
