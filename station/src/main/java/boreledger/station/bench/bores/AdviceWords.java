package boreledger.station.bench.bores;

import boreledger.station.bench.words.BoresText;
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
      return BoresText.NO_ADVICE.with();
    }
    return switch (advice.cure()) {
      case "hone" -> BoresText.HONE.with();
      case "oversize" ->
          (advice.largestListed() ? BoresText.LARGEST_OVERSIZE : BoresText.OVERSIZE)
              .with(lengths.depth(advice.oversizeMm()) + " " + lengths.symbol());
      default -> BoresText.SLEEVE.with();
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
            ? BoresText.NO_FINISHED_SIZE.with()
            : BoresText.FINISHED_SIZE.with(
                lengths.length(cylinder.finishedMm(), lengths.coarseDecimals()));
    return cylinder.reasons().isEmpty()
        ? BoresText.HONING_WILL_DO.with(number, finished)
        : BoresText.HONING_WILL_NOT_DO.with(
            number, finished, String.join("; ", Told.with(lengths).each(cylinder.reasons())));
  }
}
