package org.scalepan.ask;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Cited;
import org.scalepan.factors.Library;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.ChainStep;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.HarmonisationStep;
import org.scalepan.literature.Harmonised;
import org.scalepan.literature.PairedEvidence;

/** Every reference that an answer rests on: of results, of conversions, of the warming set. */
public final class Citations {
    private final Set<String> sources = new LinkedHashSet<>();

    public Citations add(PublishedEstimate estimate) {
        if (estimate.evidence() instanceof Evidence.PooledEvidence some) {
            some.findings().forEach(this::add);
        }
        return this;
    }

    /** A source by its id. */
    public void addSource(String id) {
        sources.add(id);
    }

    public Citations add(PairedEvidence paired) {
        paired.ratios().forEach(ratio -> {
            sources.add(ratio.study());
            ratio.borrowed().sources().forEach(sources::add);
        });
        return this;
    }

    public Citations add(WarmingSet set) {
        set.potentials().values().stream()
                .map(potential -> potential.cited().source())
                .sorted()
                .forEach(sources::add);
        return this;
    }

    private void add(Harmonised finding) {
        sources.add(finding.result().cited().source());
        for (HarmonisationStep step : finding.steps()) {
            if (step instanceof HarmonisationStep.ToUnit unit
                    && unit.step() instanceof ChainStep.PublishedStep published) {
                add(published.row().cited());
            } else if (step instanceof HarmonisationStep.ToWarmingSet warming) {
                add(warming.rebasing().shares().cited());
                add(warming.rebasing().underShares());
                add(warming.rebasing().from());
            }
        }
    }

    private void add(Cited cited) {
        sources.add(cited.source());
    }

    /** The references, in order of first use. */
    public List<Reference> references(Library library) {
        return sources.stream().flatMap(id -> library.reference(id).stream()).toList();
    }
}
