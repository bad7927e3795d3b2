package boreledger.station.bench.words;

import boreledger.station.wording.Figures;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Vocabulary;
import boreledger.station.wording.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What results, gauges and the ledger tell, in the language that is spoken. */
public final class Told {
  private Told() {}

  /** The words of the language that is spoken. */
  public static Vocabulary vocabulary() {
    return Language.spoken().vocabulary();
  }

  /** Puts statements into words, with lengths as a room shows them. */
  public static Wording with(LengthFormat lengths) {
    return new Wording(vocabulary(), new ShownFigures(lengths));
  }

  /** A sentence that came as English text; one that is not known stays as it is. */
  public static String recorded(String english) {
    return vocabulary().recorded(english);
  }

  private record ShownFigures(LengthFormat lengths) implements Figures {
    @Override
    public String length(double mm) {
      return lengths.length(mm, lengths.usualDecimals());
    }

    @Override
    public String difference(double mm) {
      return lengths.difference(mm, lengths.usualDecimals()) + " " + lengths.symbol();
    }

    @Override
    public String depth(double mm) {
      return lengths.depth(mm) + " " + lengths.symbol();
    }

    @Override
    public String ratio(double value, int decimals) {
      BigDecimal number = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
      String digits = number.abs().toPlainString();
      return number.signum() < 0 ? LengthFormat.MINUS + digits : digits;
    }
  }
}
