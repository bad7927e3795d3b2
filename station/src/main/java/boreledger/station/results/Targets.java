package boreledger.station.results;

import boreledger.calc.gapping.GapRule;
import boreledger.calc.gapping.GapTarget;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.job.RingKind;
import boreledger.station.table.GapRuleTable;
import boreledger.station.table.GapRuleTable.Use;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What gap each ring of a job should have. */
final class Targets {
  private final Job job;
  private final GapRuleTable table;
  private final Map<String, GapTarget> byRing = new LinkedHashMap<>();

  Targets(Job job, GapRuleTable table) {
    this.job = job;
    this.table = table;
    GapTarget top = null;
    for (Ring ring : job.rings()) {
      GapTarget target = target(ring, top);
      if (target != null) {
        byRing.put(ring.name(), target);
      }
      if (ring.kind() == RingKind.TOP) {
        top = target;
      }
    }
  }

  /** The target of a ring; empty for a ring that is only verified. */
  Optional<GapTarget> of(Ring ring) {
    return Optional.ofNullable(byRing.get(ring.name()));
  }

  /** Whether the job's engine is boosted beyond what its maker meant. */
  boolean boosted() {
    return job.rings().stream()
        .map(Ring::rule)
        .filter(Objects::nonNull)
        .map(table.uses()::get)
        .anyMatch(Use::boosted);
  }

  private GapTarget target(Ring ring, GapTarget top) {
    if (ring.targetMm() != null) {
      return ring.targetMm() > 0 ? GapTarget.given(ring.targetMm(), "the job's target_mm") : null;
    }
    GapRule rule = table.rules().find(ring.rule(), ring.kind().word()).orElseThrow();
    if (rule.verifyOnly()) {
      return null;
    }
    GapTarget target = GapTarget.byRule(rule, job.engine().nominalBoreMm());
    boolean follows = ring.kind() == RingKind.SECOND && top != null;
    return follows ? target.notBelowTopRing(top) : target;
  }
}
