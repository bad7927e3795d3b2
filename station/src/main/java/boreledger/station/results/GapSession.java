package boreledger.station.results;

import boreledger.calc.ring.GapBudget;
import boreledger.calc.ring.GapReading;
import boreledger.calc.uncertainty.Budget;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.station.job.Ring;
import boreledger.station.plan.Position;
import boreledger.station.session.StoredSession;
import boreledger.station.wording.Part.Name;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import java.util.ArrayList;
import java.util.List;

/** A gap session's readings of one ring. */
record GapSession(Ring ring, StoredSession session, GaugeProfile gauge) {
  /** The gaps read in a cylinder, from the deck down. */
  List<GapReading> gaps(int cylinder) {
    Budget budget =
        GapBudget.byGauge(BoreSession.accuracy(gauge), BoreSession.repeatability(gauge));
    List<GapReading> gaps = new ArrayList<>();
    for (double depthMm : ring.depthsMm()) {
      session
          .at(new Position.Gap(cylinder, ring.name(), depthMm))
          .map(
              stored ->
                  new GapReading(
                      depthMm,
                      stored.reading().valueMm(),
                      BoreSession.orReference(session.stintAt(stored.reading().tS()).blockTempC()),
                      budget))
          .ifPresent(gaps::add);
    }
    return gaps;
  }

  /** What a person should know about the session as a whole. */
  List<Statement> cautions() {
    return session.stints().stream().anyMatch(stint -> stint.blockTempC() == null)
        ? List.of(Phrase.GAP_TEMPERATURE_NOT_TAKEN.of(new Name(ring.name())))
        : List.of();
  }
}
