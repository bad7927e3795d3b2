package boreledger.station.bench.model;

import boreledger.drivers.profile.PickSpec;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Lengths;
import boreledger.station.bench.words.Text;
import boreledger.station.job.Setting;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import java.util.Map;

/**
 * The position to gauge now, in words.
 *
 * @param label what the words below it are; empty when nothing is waited for
 * @param title such as {@code Cylinder 2}
 * @param detail such as {@code 60 mm below the deck, thrust axis}
 * @param hint what the gauge wants, such as to be rocked; empty when nothing is waited for
 */
public record Place(String label, String title, String detail, String hint) {
  private static final Map<SettingCheck, Text> CHECKS =
      Map.of(
          SettingCheck.OPENING, BenchText.PLACE_OPENING,
          SettingCheck.RESUMING, BenchText.PLACE_RESUMING,
          SettingCheck.CLOSING, BenchText.PLACE_CLOSING);
  private static final Map<SettingCheck, Text> SHORT_CHECKS =
      Map.of(
          SettingCheck.OPENING, BenchText.SHORT_OPENING,
          SettingCheck.RESUMING, BenchText.SHORT_RESUMING,
          SettingCheck.CLOSING, BenchText.SHORT_CLOSING);

  static Place none() {
    return new Place("", BenchText.PLACE_NONE.with(), BenchText.PLACE_NONE_DETAIL.with(), "");
  }

  static Place of(Sitting sitting) {
    return sitting
        .next()
        .map(
            next ->
                new Place(
                    BenchText.PLACE_LABEL.with(),
                    title(sitting, next),
                    detail(sitting, next),
                    hint(sitting)))
        .orElseGet(
            () ->
                new Place("", BenchText.PLACE_DONE.with(), BenchText.PLACE_DONE_DETAIL.with(), ""));
  }

  /** A position in few words for a sentence, such as {@code cylinder 2, 60 mm, thrust axis}. */
  public static String brief(Lengths lengths, Position position) {
    if (position instanceof Position.Bore bore) {
      return BenchText.SHORT_BORE.with(
          Integer.toString(bore.cylinder()), lengths.depth(bore.depthMm()), bore.axis());
    } else if (position instanceof Position.Gap gap) {
      return BenchText.SHORT_GAP.with(
          Integer.toString(gap.cylinder()), lengths.depth(gap.depthMm()), gap.ring());
    } else if (position instanceof Position.RingDepth ring) {
      return BenchText.SHORT_RING_DEPTH.with(
          Integer.toString(ring.cylinder()),
          lengths.depth(ring.depthMm()),
          ring.ring(),
          Lengths.plain(ring.clockDeg()));
    }
    return SHORT_CHECKS.get((SettingCheck) position).with();
  }

  private static String title(Sitting sitting, Position position) {
    if (position instanceof SettingCheck) {
      boolean ring = sitting.job().setting().kind() == Setting.Kind.RING;
      return (ring ? BenchText.PLACE_SETTING_RING : BenchText.PLACE_SETTING_MICROMETER).with();
    }
    int cylinder = Sitting.cylinder(position).orElseThrow();
    return BenchText.PLACE_CYLINDER.with(Integer.toString(cylinder));
  }

  private static String detail(Sitting sitting, Position position) {
    Lengths lengths = sitting.lengths();
    if (position instanceof Position.Bore bore) {
      return BenchText.PLACE_BORE.with(lengths.depth(bore.depthMm()), bore.axis());
    } else if (position instanceof Position.Gap gap) {
      return BenchText.PLACE_GAP.with(lengths.depth(gap.depthMm()), gap.ring());
    } else if (position instanceof Position.RingDepth ring) {
      return BenchText.PLACE_RING_DEPTH.with(
          lengths.depth(ring.depthMm()), ring.ring(), Lengths.plain(ring.clockDeg()));
    }
    return CHECKS.get((SettingCheck) position).with(lengths.size(settingMm(sitting)));
  }

  private static double settingMm(Sitting sitting) {
    return sitting.job().setting().sizeMm();
  }

  private static String hint(Sitting sitting) {
    PickSpec rule = sitting.start().gauge().pick();
    if (rule instanceof PickSpec.Rock) {
      return BenchText.HINT_ROCK.with();
    }
    return (rule instanceof PickSpec.Settle ? BenchText.HINT_SETTLE : BenchText.HINT_PRESS).with();
  }
}
