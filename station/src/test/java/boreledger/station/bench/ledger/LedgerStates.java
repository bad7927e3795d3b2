package boreledger.station.bench.ledger;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.BenchFolder;
import boreledger.station.app.EntryLine;
import boreledger.station.app.Replay;
import boreledger.station.app.Standing;
import boreledger.station.bench.House;
import boreledger.station.session.SmallJob;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
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
    ALL.put("movable", LedgerStates::movable);
    ALL.put("moved", LedgerStates::moved);
    ALL.put("about", LedgerStates::about);
    ALL.put("amended", LedgerStates::amended);
    ALL.put("refused-amendment", LedgerStates::refusedAmendment);
    ALL.put("comparing", LedgerStates::comparing);
    ALL.put("comparing-nothing", LedgerStates::comparingNothing);
    ALL.put("compared", LedgerStates::compared);
    ALL.put("compared-profiles", LedgerStates::comparedProfiles);
    ALL.put("compared-gaps", LedgerStates::comparedGaps);
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
      model.entries().correction().reason().why().set(why);
      model.entries().correction().reason().who().set("A. Turner");
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
    model.entries().correction().reason().why().set("chip under the anvil");
    model.entries().correction().reason().who().set("A. Turner");
    model.entries().correction().correct();
    return model;
  }

  /** A reading whose neighbour was taken back, so that its place is free; no place chosen. */
  static LedgerModel movable(Path folder) throws Exception {
    LedgerModel model = sessions(folder);
    CorrectionModel correction = model.entries().correction();
    model.entries().open(line(model, Standing.IN_FORCE, 4));
    correction.reason().why().set("gauged in the wrong cylinder");
    correction.reason().who().set("A. Turner");
    correction.correct();
    model.entries().open(line(model, Standing.IN_FORCE, 3));
    correction.reason().who().set("");
    correction.move();
    return model;
  }

  private static LedgerModel moved(Path folder) throws Exception {
    LedgerModel model = movable(folder);
    CorrectionModel correction = model.entries().correction();
    correction.place().set(correction.places().get(0));
    correction.reason().why().set("gauged one level deeper than called for");
    correction.reason().who().set("A. Turner");
    correction.move();
    return model;
  }

  private static LedgerModel about(Path folder) throws Exception {
    LedgerModel model = sessions(folder);
    model.entries().openAbout();
    return model;
  }

  private static LedgerModel amended(Path folder) throws Exception {
    LedgerModel model = about(folder);
    AboutModel about = model.entries().about();
    about.settingTemp().set("21,5");
    about.blockTemp().set("24");
    amend(about, "the thermometer read wrong");
    about.blockTemp().set("24.5");
    about.fromEntry().set(Long.toString(line(model, Standing.IN_FORCE, 5).entry().seq()));
    amend(about, "the door stood open from then on");
    return model;
  }

  private static LedgerModel refusedAmendment(Path folder) throws Exception {
    LedgerModel model = about(folder);
    AboutModel about = model.entries().about();
    about.settingTemp().set("warm");
    about.blockTemp().set("240");
    about.fromEntry().set("the third");
    about.amend();
    return model;
  }

  private static void amend(AboutModel about, String why) {
    about.reason().why().set(why);
    about.reason().who().set("A. Turner");
    about.amend();
  }

  private static LedgerModel comparing(Path folder) throws Exception {
    LedgerModel model = sessions(folder);
    model.part().set(LedgerPart.COMPARE);
    ComparisonModel comparison = model.comparison();
    comparison.entered();
    comparison.markBefore(comparison.sessions().get(0));
    comparison.markAfter(comparison.sessions().get(1));
    comparison.compare();
    return model;
  }

  private static LedgerModel comparingNothing(Path folder) {
    LedgerModel model = new LedgerHouse(House.empty(folder)).model();
    model.part().set(LedgerPart.COMPARE);
    model.comparison().compare();
    return model;
  }

  private static LedgerModel compared(Path folder) throws Exception {
    LedgerModel model = new LedgerHouse(honed(folder)).model();
    compare(model);
    model.comparison().cylinder().set(1);
    return model;
  }

  private static LedgerModel comparedProfiles(Path folder) throws Exception {
    LedgerModel model = new LedgerHouse(House.gauged(folder, "bore-press", "bore-rocked")).model();
    compare(model);
    model.comparison().cylinder().set(2);
    return model;
  }

  private static LedgerModel comparedGaps(Path folder) throws Exception {
    House house = House.empty(folder);
    BenchFolder bench = new BenchFolder(folder);
    for (List<String> gaps : List.of(BenchFolder.GAPS, List.of("0.450", "0.430"))) {
      Replay.prepare(bench.job(), List.of(bench.gaps(gaps)), null)
          .into(house.ledger(), event -> {});
    }
    LedgerModel model = new LedgerHouse(house).model();
    compare(model);
    return model;
  }

  /** Compares the two sessions of a room, the older one as the one before. */
  private static void compare(LedgerModel model) {
    model.part().set(LedgerPart.COMPARE);
    ComparisonModel comparison = model.comparison();
    comparison.entered();
    comparison.markBefore(comparison.sessions().get(1));
    comparison.markAfter(comparison.sessions().get(0));
    comparison.compare();
  }

  /**
   * The small engine's bores as they were, bare, and 0.010 mm larger with a torque plate on and one
   * depth less.
   */
  static House honed(Path folder) throws Exception {
    House house = House.empty(folder);
    BenchFolder bench = new BenchFolder(folder);
    String condition = "cte_per_k = 11.0e-6\ncondition = ";
    SmallJob bare = SmallJob.standard().with("cte_per_k = 11.0e-6", condition + "\"bare\"");
    SmallJob plate =
        SmallJob.atOneDepth().with("cte_per_k = 11.0e-6", condition + "\"torque-plate\"");
    Replay.prepare(bench.job(bare), List.of(bench.bores(BenchFolder.BORES)), null)
        .into(house.ledger(), event -> {});
    List<String> larger = List.of("+0.000", "+0.038", "+0.022", "+0.000");
    Replay.prepare(bench.job(plate), List.of(bench.bores(larger)), null)
        .into(house.ledger(), event -> {});
    return house;
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
    model.export().write();
    return model;
  }
}
