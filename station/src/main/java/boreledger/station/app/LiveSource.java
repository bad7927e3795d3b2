package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.job.Job;
import java.util.function.Consumer;

/** Where the bytes of a live session come from, before it is opened. */
interface LiveSource {
  /** What a request chose, its files read. */
  static LiveSource of(LiveRequest request, Typing typing, Job job)
      throws FileProblem, UsageProblem {
    if (request.listening() instanceof LiveChoice.Practice practice) {
      return new PracticeSource(request, practice, job);
    }
    return new PortSource((LiveChoice.Gauge) request.listening(), typing);
  }

  /** The gauge's profile. */
  GaugeProfile gauge();

  /** Where the bytes come from, in words for the ledger. */
  String words();

  /** How many of the session's seconds pass in a second. */
  double speed();

  /** Opens the line. */
  Line open(SittingClock clock) throws LineFault;

  /** Who else is told of what happens, now that the line is open. */
  Consumer<GaugingEvent> listener();
}
