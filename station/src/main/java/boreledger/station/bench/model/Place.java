package boreledger.station.bench.model;

import boreledger.drivers.profile.PickSpec;
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
          SettingCheck.OPENING, Text.PLACE_OPENING,
          SettingCheck.RESUMING, Text.PLACE_RESUMING,
          SettingCheck.CLOSING, Text.PLACE_CLOSING);
  private static final Map<SettingCheck, Text> SHORT_CHECKS =
      Map.of(
          SettingCheck.OPENING, Text.SHORT_OPENING,
          SettingCheck.RESUMING, Text.SHORT_RESUMING,
          SettingCheck.CLOSING, Text.SHORT_CLOSING);

  static Place none() {
    return new Place("", Text.PLACE_NONE.with(), Text.PLACE_NONE_DETAIL.with(), "");
  }

  static Place of(Sitting sitting) {
    return sitting
        .next()
        .map(
            next ->
                new Place(
                    Text.PLACE_LABEL.with(),
                    title(sitting, next),
                    detail(sitting, next),
                    hint(sitting)))
        .orElseGet(() -> new Place("", Text.PLACE_DONE.with(), Text.PLACE_DONE_DETAIL.with(), ""));
  }

  /** A position in few words for a sentence, such as {@code cylinder 2, 60 mm, thrust axis}. */
  public static String brief(Lengths lengths, Position position) {
    if (position instanceof Position.Bore bore) {
      return Text.SHORT_BORE.with(
          Integer.toString(bore.cylinder()), lengths.depth(bore.depthMm()), bore.axis());
    } else if (position instanceof Position.Gap gap) {
      return Text.SHORT_GAP.with(
          Integer.toString(gap.cylinder()), lengths.depth(gap.depthMm()), gap.ring());
    } else if (position instanceof Position.RingDepth ring) {
      return Text.SHORT_RING_DEPTH.with(
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
      return (ring ? Text.PLACE_SETTING_RING : Text.PLACE_SETTING_MICROMETER).with();
    }
    int cylinder = Sitting.cylinder(position).orElseThrow();
    return Text.PLACE_CYLINDER.with(Integer.toString(cylinder));
  }

  private static String detail(Sitting sitting, Position position) {
    Lengths lengths = sitting.lengths();
    if (position instanceof Position.Bore bore) {
      return Text.PLACE_BORE.with(lengths.depth(bore.depthMm()), bore.axis());
    } else if (position instanceof Position.Gap gap) {
      return Text.PLACE_GAP.with(lengths.depth(gap.depthMm()), gap.ring());
    } else if (position instanceof Position.RingDepth ring) {
      return Text.PLACE_RING_DEPTH.with(
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
      return Text.HINT_ROCK.with();
    }
    return (rule instanceof PickSpec.Settle ? Text.HINT_SETTLE : Text.HINT_PRESS).with();
  }
}
