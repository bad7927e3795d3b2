package boreledger.station.bench.ledger;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.EntryLine;
import boreledger.station.app.Standing;
import boreledger.station.bench.House;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The states of the room that are drawn and measured. */
final class LedgerStates {
  /** A state: how the room is brought into it. */
  @FunctionalInterface
  interface State {
    LedgerModel reach(Path folder) throws Exception;
  }

  static final Map<String, State> ALL = new LinkedHashMap<>();

  static {
    ALL.put("empty", folder -> new LedgerHouse(House.empty(folder)).model());
    ALL.put("sessions", LedgerStates::sessions);
    ALL.put("damaged", LedgerStates::damaged);
    ALL.put("struck", LedgerStates::struck);
    ALL.put("bore-reading", LedgerStates::boreReading);
    ALL.put("rocked-reading", LedgerStates::rockedReading);
    ALL.put("refused-sample", LedgerStates::refusedSample);
    ALL.put("refused-correction", LedgerStates::refusedCorrection);
    ALL.put("restorable", LedgerStates::restorable);
    ALL.put("audit", LedgerStates::audit);
    ALL.put("auditing", LedgerStates::auditing);
    ALL.put("sheet", LedgerStates::sheet);
  }

  private LedgerStates() {}

  static void choose(LedgerModel model, Measure measure) {
    model.choose(
        model.sessions().stream()
            .filter(session -> session.opened().measure() == measure)
            .findFirst()
            .orElseThrow());
  }

  static EntryLine line(LedgerModel model, Standing standing, int index) {
    return model.entries().lines().stream()
        .filter(line -> line.standing() == standing)
        .skip(index)
        .findFirst()
        .orElseThrow();
  }

  private static LedgerModel sessions(Path folder) throws Exception {
    LedgerModel model = LedgerHouse.gauged(folder).model();
    choose(model, Measure.BORE);
    return model;
  }

  private static LedgerModel damaged(Path folder) throws Exception {
    LedgerModel model = new LedgerHouse(House.gauged(folder, "bore-damaged")).model();
    choose(model, Measure.BORE);
    return model;
  }

  private static LedgerModel struck(Path folder) throws Exception {
    LedgerModel model = sessions(folder);
    for (String why : new String[] {"chip under the anvil", "bumped while it was being read"}) {
      model.entries().open(line(model, Standing.IN_FORCE, 3));
      model.entries().correction().why().set(why);
      model.entries().correction().who().set("A. Turner");
      model.entries().correction().correct();
    }
    model.entries().close();
    return model;
  }

  private static LedgerModel boreReading(Path folder) throws Exception {
    LedgerModel model = sessions(folder);
    model.entries().open(line(model, Standing.IN_FORCE, 3));
    return model;
  }

  private static LedgerModel rockedReading(Path folder) throws Exception {
    LedgerModel model = new LedgerHouse(House.gauged(folder, "bore-rocked")).model();
    model.entries().open(line(model, Standing.IN_FORCE, 3));
    return model;
  }

  private static LedgerModel refusedSample(Path folder) throws Exception {
    LedgerModel model = damaged(folder);
    model.entries().open(line(model, Standing.NO_READING, 2));
    return model;
  }

  private static LedgerModel refusedCorrection(Path folder) throws Exception {
    LedgerModel model = boreReading(folder);
    model.entries().correction().correct();
    return model;
  }

  private static LedgerModel restorable(Path folder) throws Exception {
    LedgerModel model = boreReading(folder);
    model.entries().correction().why().set("chip under the anvil");
    model.entries().correction().who().set("A. Turner");
    model.entries().correction().correct();
    return model;
  }

  private static LedgerModel audit(Path folder) throws Exception {
    LedgerModel model = struck(folder);
    model.part().set(LedgerPart.AUDIT);
    model.audit().audit();
    return model;
  }

  private static LedgerModel auditing(Path folder) throws Exception {
    LedgerModel model = LedgerHouse.gauged(folder).model(never -> {});
    model.part().set(LedgerPart.AUDIT);
    model.audit().audit();
    return model;
  }

  private static LedgerModel sheet(Path folder) throws Exception {
    LedgerModel model = sessions(folder);
    model.part().set(LedgerPart.SHEET);
    model.sheet().by().set("A. Turner");
    model.sheet().write();
    model.sheet().write();
    return model;
  }
}
