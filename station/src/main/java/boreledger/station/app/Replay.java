package boreledger.station.app;

import boreledger.drivers.capture.Capture;
import boreledger.drivers.capture.CaptureFiles;
import boreledger.drivers.capture.CaptureHeader;
import boreledger.drivers.capture.CaptureLine;
import boreledger.drivers.capture.Pace;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingRun;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobResults;
import boreledger.station.session.Session;
import boreledger.station.session.SessionStart;
import boreledger.station.session.WallClock;
import boreledger.station.table.Tables;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Gauges from capture files, each of which becomes a session of its own. */
public final class Replay {
  private final List<Recording> recordings;

  private Replay(List<Recording> recordings) {
    this.recordings = List.copyOf(recordings);
  }

  private record Recording(Capture capture, SessionStart start) {}

  /**
   * Reads every file completely, before any ledger is touched.
   *
   * @param gauges where gauge profiles are looked for that are not beside their capture; null for
   *     nowhere else
   */
  public static Replay prepare(Path jobFile, List<Path> captureFiles, Path gauges)
      throws FileProblem, UsageProblem {
    Tables tables = Tables.inForce();
    Job job = new JobFiles(tables).read(jobFile);
    List<Recording> recordings = new ArrayList<>();
    for (Path file : captureFiles) {
      Capture capture = CaptureFiles.read(file);
      recordings.add(new Recording(capture, start(job, tables, file, capture, gauges)));
    }
    return new Replay(recordings);
  }

  /** Plays everything at once into a ledger, made when there is none. */
  public JobResults into(Path ledgerFile, Consumer<GaugingEvent> watcher) throws LedgerFault {
    try (Ledger ledger = Ledger.openOrCreate(ledgerFile)) {
      return into(ledger, () -> Pace.asFastAsRead(), new Play(watcher));
    }
  }

  /**
   * Plays the captures one after the other.
   *
   * @param pace a pace for each capture
   * @return the results of what was played
   */
  JobResults into(Ledger ledger, Supplier<Pace> pace, Play play) throws LedgerFault {
    List<Long> sessions = new ArrayList<>();
    for (Recording each : recordings) {
      CaptureHeader header = each.capture().header();
      Session session = Session.open(ledger, each.start(), WallClock.from(header.started()));
      sessions.add(session.id());
      CaptureLine line = new CaptureLine(each.capture(), pace.get());
      if (play.run(GaugingRun.recorded(session, line, play.watcher())) == Ending.STOPPED) {
        break;
      }
    }
    try (LedgerView view = ledger.view()) {
      return new StoredJobs(view).results(sessions);
    }
  }

  private static SessionStart start(Job job, Tables tables, Path file, Capture capture, Path gauges)
      throws FileProblem, UsageProblem {
    CaptureHeader header = capture.header();
    List<Path> folders = new ArrayList<>();
    folders.add(file.toAbsolutePath().getParent());
    if (gauges != null) {
      folders.add(gauges);
    }
    Optional<GaugeProfile> found = GaugeProfiles.lookUp(header.gauge(), folders);
    if (found.isEmpty()) {
      throw FileProblem.at(
          file.toString(),
          1,
          "gauge is "
              + header.gauge()
              + ", no such profile; looked "
              + GaugeProfiles.places(folders));
    }
    GaugeProfile gauge = found.get();
    return new SessionStart(
        job,
        tables,
        gauge,
        header.measure(),
        Measuring.ring(job, gauge, header.measure(), header.ring(), file + ":1"),
        header.settingTempC(),
        header.blockTempC(),
        "capture file " + capture.fileName());
  }
}
