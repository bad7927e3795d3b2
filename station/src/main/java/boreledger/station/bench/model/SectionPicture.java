package boreledger.station.bench.model;

import boreledger.drivers.capture.Measure;
import boreledger.station.bench.model.Grid.State;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Lengths;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import java.util.List;
import java.util.Optional;

/**
 * The cylinder being gauged, cut open from the side; or the setting ring.
 *
 * @param kind what is drawn in the bore
 * @param caption what is seen, such as {@code Along the thrust axis}
 * @param lengthMm how deep the picture reaches below the deck
 * @param boreMm the nominal bore
 * @param depths from the deck down
 * @param setting the setting's size; empty unless the setting is drawn
 * @param spoken the picture in words, for screen readers
 */
public record SectionPicture(
    Kind kind,
    String caption,
    double lengthMm,
    double boreMm,
    List<Depth> depths,
    String setting,
    String spoken) {
  private static final double ROOM_BELOW = 1.12;

  /** What is drawn. */
  public enum Kind {
    /** Nothing yet. */
    NONE,
    /** A bore with a gauge in it. */
    BORE,
    /** A bore with a ring in it. */
    RING,
    /** The setting ring. */
    SETTING
  }

  /**
   * One depth.
   *
   * @param state {@code TAKEN} once every reading at this depth is taken
   */
  public record Depth(double mm, String words, State state) {}

  /** Takes a copy of the list. */
  public SectionPicture {
    depths = List.copyOf(depths);
  }

  static SectionPicture none() {
    String spoken = BenchText.BLOCK_ACCESSIBLE_NONE.with();
    return new SectionPicture(Kind.NONE, "", 1, 1, List.of(), "", spoken);
  }

  static SectionPicture of(Sitting sitting) {
    Lengths lengths = sitting.lengths();
    double settingMm = sitting.job().setting().sizeMm();
    double boreMm = sitting.job().engine().nominalBoreMm();
    if (sitting.progress().next() instanceof SettingCheck) {
      String size = lengths.size(settingMm);
      String spoken = BenchText.SECTION_ACCESSIBLE_SETTING.with(size);
      return new SectionPicture(
          Kind.SETTING, BenchText.SECTION_SETTING.with(), 1, boreMm, List.of(), size, spoken);
    }
    List<Depth> depths = sitting.depthsMm().stream().map(mm -> depth(sitting, mm)).toList();
    return new SectionPicture(
        sitting.measure() == Measure.BORE ? Kind.BORE : Kind.RING,
        caption(sitting),
        lengthMm(sitting),
        boreMm,
        depths,
        "",
        spoken(sitting, depths));
  }

  /** The depth to gauge now; empty when the plan is done. */
  public Optional<Depth> now() {
    return depths.stream().filter(each -> each.state() == State.NOW).findFirst();
  }

  private static Depth depth(Sitting sitting, double mm) {
    List<Position> here =
        sitting.ofCylinder(sitting.shownCylinder()).stream()
            .filter(each -> Sitting.depthMm(each).equals(Optional.of(mm)))
            .toList();
    boolean now = sitting.next().filter(here::contains).isPresent();
    State open = here.stream().allMatch(sitting::has) ? State.TAKEN : State.OPEN;
    return new Depth(mm, sitting.lengths().depth(mm), now ? State.NOW : open);
  }

  private static double lengthMm(Sitting sitting) {
    double deepestMm = sitting.depthsMm().stream().mapToDouble(mm -> mm).max().orElse(1);
    double travelMm =
        sitting.job().rings().stream().mapToDouble(ring -> ring.travelBottomMm()).max().orElse(0);
    double strokeMm = sitting.job().engine().strokeMm();
    return ROOM_BELOW * Math.max(deepestMm, Math.max(travelMm, strokeMm));
  }

  private static String caption(Sitting sitting) {
    if (sitting.progress().next() instanceof Position.Bore bore) {
      return BenchText.SECTION_BORE.with(bore.axis());
    }
    return BenchText.SECTION_GAP.with();
  }

  private static String spoken(Sitting sitting, List<Depth> depths) {
    long taken = depths.stream().filter(each -> each.state() == State.TAKEN).count();
    return BenchText.SECTION_ACCESSIBLE.with(
        Integer.toString(sitting.shownCylinder()),
        Long.toString(taken),
        Integer.toString(depths.size()));
  }
}
