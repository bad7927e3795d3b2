package boreledger.station.bench.view;

import boreledger.drivers.pick.PickEvent;
import boreledger.station.bench.Gauges;
import boreledger.station.bench.Jobs;
import boreledger.station.bench.ScriptedRun;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.BenchServices;
import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.voice.Voice;
import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.plan.Position;
import boreledger.station.session.Outcome;
import boreledger.station.session.SessionStart;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A bench brought into one of the states that a person may see it in. */
final class BenchStates implements AutoCloseable {
  private static final double[] DEVIATIONS = {0.001, 0.0213, 0.0178, 0.014, 0.0112, 0.0047, 0.0029};
  private static final double[] WORN = {
    0.001, 0.0213, 0.0178, 0.0140, 0.0112, 0.0087, 0.0069, 0.0213, 0.0178, 0.014, 0.0112, 0.0047,
    0.0009, 0.1713, 0.1518, 0.09, 0.0812, 0.0547, 0.0429, 0.001
  };
  private static final double[] DEPTHS = {
    12.01, 12.34, 12.71, 12.42, 60.2, 60.4, 60.6, 60.5, 108.1, 108.2, 108.4, 108.3
  };
  private static final double[] GAPS = {0.481, 0.4402, 0.385};

  private static final String PULLED =
      "/dev/ttyUSB0 went away; plug the adapter in again, the session goes on by itself";

  private final Map<String, Script> scripts = new LinkedHashMap<>();
  private final ScriptedRun run;
  private final BenchModel model;
  private double nowS;

  private interface Script {
    void play() throws LedgerFault;
  }

  /** A bench with a new ledger in a folder. */
  BenchStates(Path folder) throws LedgerFault {
    run = new ScriptedRun(folder);
    BenchServices services = new BenchServices(run, run, Tones.SILENT, Voice.SILENT);
    model = new BenchModel(services, Runnable::run, Runnable::run, () -> nowS);
    run.watch(model::accept);
    scripts.put("idle", () -> {});
    scripts.put("opening", this::opening);
    scripts.put("rocked", this::rocked);
    scripts.put("refused", this::refused);
    scripts.put("held", this::held);
    scripts.put("caution", this::caution);
    scripts.put("noticed", this::noticed);
    scripts.put("beside-held", this::besideHeld);
    scripts.put("line-gone", this::lineGone);
    scripts.put("inches", this::inches);
    scripts.put("two-banks", this::twoBanks);
    scripts.put("sixteen", this::sixteen);
    scripts.put("sixty-four", this::sixtyFour);
    scripts.put("wordy", this::wordy);
    scripts.put("gap", this::gap);
    scripts.put("ring-depth", this::ringDepth);
    scripts.put("end", this::end);
    scripts.put("end-gap", this::endGap);
    scripts.put("broke", this::broke);
  }

  /** The states' names. */
  Iterable<String> names() {
    return scripts.keySet();
  }

  /** Brings the bench into a state. */
  BenchModel play(String name) throws LedgerFault {
    scripts.get(name).play();
    model.tick();
    return model;
  }

  /** The bench. */
  BenchModel model() {
    return model;
  }

  @Override
  public void close() throws LedgerFault {
    run.close();
  }

  private void opening() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.rock(0.0008, 140);
  }

  private void rocked() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(9, DEVIATIONS);
    run.notPicked("1 rock seen, 3 needed");
    run.offerUntil(10, DEVIATIONS);
    run.freeAir(15);
    run.rock(0.0112, 175);
  }

  private void refused() throws LedgerFault {
    rocked();
    run.notPicked("1 rock seen, 3 needed");
  }

  private void held() throws LedgerFault {
    rocked();
    run.live(1.51);
    run.offer(1.51);
  }

  private void caution() throws LedgerFault {
    rocked();
    run.offer(0.0123, "the key may be stuck, 5 equal values in a row", "the rocks were uneven");
    nowS += 14;
  }

  /** A unit that changed, beside a second gauge and a third one in trouble. */
  private void noticed() throws LedgerFault {
    gap();
    String changed =
        "the gauge went from mm to in in the middle of the session; check that its setting still"
            + " holds";
    model.accept(new GaugingEvent.Noticed(changed));
    SessionStart depths = run.besideStart("top");
    Position here = new Position.RingDepth(1, "top", 12.0, 180.0);
    beside("top", new GaugingEvent.Began(depths, 40, false, List.of(), new Progress(here, 2, 36)));
    Outcome taken = new Outcome.Taken(41, here, 15.412, List.of(), here);
    beside("top", new GaugingEvent.Said(taken, new Progress(here, 3, 36)));
    beside("second", new GaugingEvent.Live(Gauges.sample(1, 15.9)));
    beside("second", new GaugingEvent.LineGone(PULLED, new Progress(null, 0, 0)));
  }

  /** A value of the second gauge is far off. */
  private void besideHeld() throws LedgerFault {
    noticed();
    Position here = new Position.RingDepth(1, "top", 12.0, 180.0);
    PickEvent.Picked picked =
        new PickEvent.Picked(9, 900, null, List.of(Gauges.sample(9, 900)), List.of());
    String why =
        "ring depth 900.0000 mm is outside 5.0000 to 50.0000 mm; check the gauge, its unit"
            + " and its setting";
    beside(
        "top",
        new GaugingEvent.Said(new Outcome.Held(here, picked, why), new Progress(here, 3, 36)));
  }

  private void beside(String ring, GaugingEvent event) {
    model.accept(new GaugingEvent.Beside("ring-depth " + ring, event));
  }

  private void lineGone() throws LedgerFault {
    rocked();
    model.accept(new GaugingEvent.LineGone(PULLED, run.progress()));
  }

  private void inches() throws LedgerFault {
    run.beginBores(Jobs.inches(), Gauges.rocked());
    run.offerUntil(10, DEVIATIONS);
    run.rock(-0.0123, 230);
  }

  private void twoBanks() throws LedgerFault {
    run.beginBores(Jobs.millHouse(), Gauges.settled());
    run.offerUntil(60, 96.002, 96.0213, 96.0178, 96.014);
    run.live(96.0192);
  }

  private void sixteen() throws LedgerFault {
    run.beginBores(Jobs.longMill(), Gauges.rocked());
    run.offerUntil(60, DEVIATIONS);
    run.rock(0.0123, 230);
  }

  private void sixtyFour() throws LedgerFault {
    run.beginBores(Jobs.endless(), Gauges.rocked());
    run.offerUntil(101, DEVIATIONS);
    run.rock(0.0123, 230);
  }

  private void wordy() throws LedgerFault {
    run.onLine(
        "/dev/serial/by-id/usb-A_maker_of_adapters_with_a_long_name_0123456789-if00-port0,"
            + " 115200 baud, 7 data bits, even parity");
    run.beginBores(Jobs.wordy(), Gauges.wordy());
    run.offerUntil(3, DEVIATIONS);
    run.notPicked(
        "the value jumped by 12.3456 mm between two samples, which no gauge of this kind can do;"
            + " look at the cable, the plug and the unit that the gauge is set to");
    run.offer(
        0.0123,
        "the key may be stuck, 5 equal values in a row",
        "the rocks were uneven: the last one reached 0.0120 mm less deep than the one before, so"
            + " that the smallest value may not have been met; gauge this place again");
  }

  private void gap() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(20, WORN);
    run.over(Ending.PLAN_DONE);
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
    run.offerUntil(4, GAPS);
    run.live(0.4402);
    nowS += 7;
  }

  private void ringDepth() throws LedgerFault {
    run.beginRingDepths(Jobs.pumphouse(), Gauges.pressed(), "top");
    run.offerUntil(18, DEPTHS);
  }

  private void end() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(20, WORN);
    run.over(Ending.PLAN_DONE);
  }

  private void endGap() throws LedgerFault {
    gap();
    run.offerUntil(9, GAPS);
    run.over(Ending.PLAN_DONE);
  }

  private void broke() throws LedgerFault {
    rocked();
    run.over(Ending.LINE_BROKE);
  }
}
