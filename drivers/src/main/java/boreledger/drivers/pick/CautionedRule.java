package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;
import java.util.ArrayList;
import java.util.List;

/** Any pick rule, whose readings also carry the cautions of the samples that they came from. */
final class CautionedRule implements PickRule {
  private final PickRule rule;

  CautionedRule(PickRule rule) {
    this.rule = rule;
  }

  @Override
  public List<PickEvent> accept(Sample sample) {
    return withCautions(rule.accept(sample));
  }

  @Override
  public List<PickEvent> quiet(double tS) {
    return withCautions(rule.quiet(tS));
  }

  @Override
  public List<PickEvent> end(double tS) {
    return withCautions(rule.end(tS));
  }

  /** The event with each caution of its samples said once, behind its own. */
  static PickEvent withCautionsOfSamples(PickEvent event) {
    if (!(event instanceof PickEvent.Picked picked)) {
      return event;
    }
    List<String> cautions = new ArrayList<>(picked.cautions());
    picked.samples().stream()
        .flatMap(sample -> sample.cautions().stream())
        .distinct()
        .forEach(cautions::add);
    return new PickEvent.Picked(
        picked.tS(), picked.valueMm(), picked.standardUncertaintyMm(), picked.samples(), cautions);
  }

  private static List<PickEvent> withCautions(List<PickEvent> events) {
    return events.stream().map(CautionedRule::withCautionsOfSamples).toList();
  }
}
