package boreledger.station.bench;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.serial.PortIdentity;
import boreledger.drivers.serial.SerialPorts;
import boreledger.station.app.Folders;
import boreledger.station.app.GaugeLesson;
import boreledger.station.app.GaugeTrial;
import boreledger.station.app.GaugeTrial.Heard;
import boreledger.station.app.GaugingDesk;
import boreledger.station.app.LessonEvent;
import boreledger.station.app.LiveGauging;
import boreledger.station.app.LiveRequest;
import boreledger.station.app.TypedValues;
import boreledger.station.app.UsageProblem;
import boreledger.station.bench.start.StartServices;
import boreledger.station.bench.words.StartText;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.table.Tables;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** What the room to start in asks of the program. */
final class StationStart implements StartServices {
  private final GaugingDesk desk;
  private final TypedValues typed;

  StationStart(GaugingDesk desk, TypedValues typed) {
    this.desk = desk;
    this.typed = typed;
  }

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
    return SerialPorts.list();
  }

  @Override
  public void begin(LiveRequest request) throws Exception {
    if (desk.isBusy()) {
      throw new UsageProblem(StartText.BUSY.with());
    }
    Folders.makeFor(request.ledger());
    LiveGauging gauging = LiveGauging.prepare(request, typed);
    boolean begun =
        desk.begin(
            play -> {
              try (gauging) {
                return gauging.run(play);
              }
            });
    if (!begun) {
      gauging.close();
      typed.end();
      throw new UsageProblem(StartText.BUSY.with());
    }
  }

  @Override
  public boolean isGauging() {
    return desk.isBusy();
  }

  @Override
  public void stopGauging() {
    desk.stop();
  }

  @Override
  public GaugeLesson learnAt(String port, Consumer<LessonEvent> told) throws UsageProblem {
    return GaugeLesson.atPort(port, GaugeLesson.PATIENCE, told);
  }

  @Override
  public GaugeLesson learnFrom(Path recording, Consumer<LessonEvent> told) throws FileProblem {
    return GaugeLesson.ofRecording(recording, told);
  }

  @Override
  public Runnable listen(Path gauge, String port, Consumer<String> heard) throws Exception {
    GaugeTrial trial = GaugeTrial.open(gauge, port, typed);
    Thread thread = new Thread(() -> listen(trial, heard), "gauge trial");
    thread.setDaemon(true);
    thread.start();
    return () -> {
      trial.close();
      typed.end();
    };
  }

  private static void listen(GaugeTrial trial, Consumer<String> heard) {
    try (trial) {
      trial.listen(each -> heard.accept(words(each)));
    } catch (LineFault e) {
      heard.accept(e.getMessage());
    }
  }

  private static String words(Heard heard) {
    if (heard instanceof Heard.Raw raw) {
      String text = new String(raw.bytes().toArray(), StandardCharsets.ISO_8859_1);
      return StartText.HEARD_RAW.with(
          raw.bytes().toHex() + "  " + text.replaceAll("\\P{Print}", "."));
    } else if (heard instanceof Heard.Value value) {
      return StartText.HEARD_VALUE.with(value.sample().valueMm() + " mm");
    }
    return StartText.HEARD_BAD.with(((Heard.NotUnderstood) heard).rejected().why());
  }
}
