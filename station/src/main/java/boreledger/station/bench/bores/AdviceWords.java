package boreledger.station.bench.bores;

import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.Told;
import boreledger.station.results.AdviceResult;
import boreledger.station.results.AdviceResult.CylinderAdviceResult;
import boreledger.station.wording.LengthFormat;
import java.util.List;

/** Hone or oversize, in words. */
final class AdviceWords {
  private AdviceWords() {}

  static String of(AdviceResult advice, LengthFormat lengths) {
    if (advice == null) {
      return Text.BORES_NO_ADVICE.with();
    }
    return switch (advice.cure()) {
      case "hone" -> Text.BORES_HONE.with();
      case "oversize" ->
          (advice.largestListed() ? Text.BORES_LARGEST_OVERSIZE : Text.BORES_OVERSIZE)
              .with(lengths.depth(advice.oversizeMm()) + " " + lengths.symbol());
      default -> Text.BORES_SLEEVE.with();
    };
  }

  static List<String> reasons(AdviceResult advice, LengthFormat lengths) {
    return advice == null
        ? List.of()
        : advice.cylinders().stream().map(each -> reason(each, lengths)).toList();
  }

  private static String reason(CylinderAdviceResult cylinder, LengthFormat lengths) {
    String number = Integer.toString(cylinder.cylinder());
    String finished =
        cylinder.finishedMm() == null
            ? Text.BORES_NO_FINISHED_SIZE.with()
            : Text.BORES_FINISHED_SIZE.with(
                lengths.length(cylinder.finishedMm(), lengths.coarseDecimals()));
    return cylinder.reasons().isEmpty()
        ? Text.BORES_HONING_WILL_DO.with(number, finished)
        : Text.BORES_HONING_WILL_NOT_DO.with(
            number, finished, String.join("; ", Told.with(lengths).each(cylinder.reasons())));
  }
}
