package boreledger.station.results;

import boreledger.drivers.capture.Measure;
import boreledger.station.job.Ring;
import boreledger.station.plan.Position;
import boreledger.station.wording.Part.Length;
import boreledger.station.wording.Part.Name;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import java.util.List;
import java.util.Optional;

/** The passes with the file that a job's sessions tell of. */
record FiledPasses(JobSessions stored) {
  /** Those of a ring in a cylinder, in the order they were noted. */
  List<FiledResult> of(int cylinder, Ring ring) {
    long gauged = lastGauged(cylinder, ring.name());
    return stored.filed().stream()
        .filter(each -> each.pass().cylinder() == cylinder)
        .filter(each -> each.pass().ring().equals(ring.name()))
        .map(each -> FiledResult.of(each, each.seq() > gauged))
        .toList();
  }

  /** What a person should know about gaps that were gauged before a ring was filed. */
  static Optional<Statement> caution(Ring ring, List<FiledResult> filed) {
    List<FiledResult> since = filed.stream().filter(FiledResult::sinceGauged).toList();
    if (since.isEmpty()) {
      return Optional.empty();
    }
    FiledResult last = since.get(since.size() - 1);
    return Optional.of(
        Phrase.FILED_SINCE_GAUGED.of(
            new Name(ring.name()),
            Name.of(since.size()),
            new Length(last.afterMm()),
            new Name(last.who())));
  }

  /** The entry of the last reading that counts; 0 when there is none. */
  private long lastGauged(int cylinder, String ring) {
    return stored
        .latest(Measure.GAP, ring)
        .map(
            session ->
                session.inForce().stream()
                    .filter(
                        each ->
                            each.position() instanceof Position.Gap gap
                                && gap.cylinder() == cylinder)
                    .mapToLong(each -> each.seq())
                    .max()
                    .orElse(0))
        .orElse(0L);
  }
}
