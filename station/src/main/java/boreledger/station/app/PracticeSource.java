package boreledger.station.app;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.capture.Pace;
import boreledger.drivers.line.Line;
import boreledger.drivers.practice.PracticeLine;
import boreledger.drivers.practice.PracticeProfiles;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.job.Job;
import java.util.function.Consumer;

/** The practice gauge, in bores invented for the job. */
final class PracticeSource implements LiveSource {
  private final LiveChoice.Practice practice;
  private final boolean bores;
  private final PracticeEngine engine;
  private PracticeLine line;

  PracticeSource(LiveRequest request, LiveChoice.Practice practice, Job job) {
    this.practice = practice;
    bores = request.measure() == Measure.BORE;
    engine = new PracticeEngine(job, practice.seed(), request.settingTempC(), request.blockTempC());
  }

  @Override
  public GaugeProfile gauge() {
    return bores ? PracticeProfiles.bore() : PracticeProfiles.size();
  }

  @Override
  public String words() {
    return "practice gauge, seed " + practice.seed();
  }

  @Override
  public double speed() {
    return practice.pace();
  }

  @Override
  public Line open(SittingClock clock) {
    line = new PracticeLine(practice.seed(), bores, Pace.times(speed()), clock.nowTS());
    return line;
  }

  @Override
  public Consumer<GaugingEvent> listener() {
    return new PracticeGuide(engine, line);
  }
}
