package boreledger.station.bench.start;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.serial.PortIdentity;
import boreledger.station.app.GaugeLesson;
import boreledger.station.app.LessonEvent;
import boreledger.station.app.LiveRequest;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.table.Tables;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Two ports, a gauge that says one thing, and a note of what was begun. */
final class FakeStart implements StartServices {
  final List<LiveRequest> begun = new ArrayList<>();
  final List<String> listened = new ArrayList<>();
  String refusal;
  boolean gauging;

  @Override
  public Job job(Path file) throws FileProblem {
    return new JobFiles(Tables.inForce()).read(file);
  }

  @Override
  public Tables tables() throws FileProblem {
    return Tables.inForce();
  }

  @Override
  public List<PortIdentity> ports() {
    return List.of(
        new PortIdentity("/dev/ttyS0", "Physical Port S0", null, null, null, null),
        new PortIdentity("/dev/ttyUSB0", "USB serial", 4660, 22136, "A1", "1-2"));
  }

  @Override
  public void begin(LiveRequest request) throws Exception {
    if (refusal != null) {
      throw new Exception(refusal);
    }
    begun.add(request);
  }

  @Override
  public boolean isGauging() {
    return gauging;
  }

  @Override
  public void stopGauging() {
    gauging = false;
  }

  @Override
  public GaugeLesson learnAt(String port, Consumer<LessonEvent> told) throws Exception {
    if (refusal != null) {
      throw new Exception(refusal);
    }
    return GaugeLesson.atPort(port, Duration.ofMinutes(5), told);
  }

  @Override
  public GaugeLesson learnFrom(Path recording, Consumer<LessonEvent> told) throws Exception {
    return GaugeLesson.ofRecording(recording, told);
  }

  @Override
  public Runnable listen(Path gauge, String port, Consumer<String> heard) throws Exception {
    if (refusal != null) {
      throw new Exception(refusal);
    }
    heard.accept("bytes 2b302e3031320d0a  +0.012..");
    heard.accept("value 0.012 mm");
    return () -> listened.add("stopped");
  }
}
