package boreledger.station.bench.ledger;

import boreledger.drivers.profile.Reads;
import boreledger.station.app.EntryLine;
import boreledger.station.app.Standing;
import boreledger.station.bench.model.Place;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Lengths;
import boreledger.station.bench.words.Told;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.ledger.EntryBody.Chosen;
import boreledger.station.ledger.EntryBody.Filed;
import boreledger.station.ledger.EntryBody.LineBroke;
import boreledger.station.ledger.EntryBody.Moved;
import boreledger.station.ledger.EntryBody.OfSession;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.Restored;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.ledger.EntryBody.Withdrawn;
import boreledger.station.plan.Position;
import boreledger.station.session.PassCheck;

/**
 * An entry of a session in words.
 *
 * @param lengths the unit that is shown
 * @param reads whether the gauge gave deviations or sizes
 */
public record EntryWords(Lengths lengths, Reads reads, Moments moments) {
  /** When it was said; empty when it does not say. */
  String when(EntryLine line) {
    return line.entry().body() instanceof OfSession said ? moments.second(said.wall()) : "";
  }

  /** Where a reading was taken, or what else happened. */
  String what(EntryLine line) {
    EntryBody body = line.entry().body();
    if (line.position() != null) {
      return place(line.position());
    } else if (body instanceof SampleRefused refused) {
      return LedgerText.REFUSED.with(RawBytes.start(refused.raw()));
    } else if (body instanceof LineBroke) {
      return LedgerText.LINE_FAULT.with();
    } else if (body instanceof SessionEnded) {
      return LedgerText.ENDED.with();
    } else if (body instanceof SessionResumed) {
      return LedgerText.RESUMED.with();
    }
    return correction(body);
  }

  /** The gauge's value; empty without one. */
  String value(EntryLine line) {
    EntryBody body = line.entry().body();
    if (body instanceof ReadingTaken reading) {
      return value(reading.valueMm());
    }
    return body instanceof SampleRefused refused && refused.valueMm() != null
        ? value(refused.valueMm())
        : "";
  }

  /** How a reading stands, or why something happened. */
  String state(EntryLine line) {
    return switch (line.standing()) {
      case IN_FORCE -> LedgerText.IN_FORCE.with();
      case READ_AGAIN -> LedgerText.READ_AGAIN.with();
      case TAKEN_BACK ->
          LedgerText.TAKEN_BACK.with(by(line.takenBack().why(), line.takenBack().who()));
      case NO_READING -> why(line.entry().body());
    };
  }

  /** Whether the entry asks a person to look. */
  boolean isCaution(EntryLine line) {
    EntryBody body = line.entry().body();
    return body instanceof SampleRefused || body instanceof LineBroke;
  }

  /** Whether there is a reading to open. */
  static boolean isReading(EntryLine line) {
    return line.standing() != Standing.NO_READING;
  }

  /** Whether there are bytes to open that became no reading. */
  static boolean isRefused(EntryLine line) {
    return line.entry().body() instanceof SampleRefused;
  }

  /** A value of the gauge. */
  String value(double valueMm) {
    return reads == Reads.DEVIATION ? lengths.deviation(valueMm) : lengths.size(valueMm);
  }

  /** A position in few words. */
  String place(Position position) {
    return Place.brief(lengths, position);
  }

  /** A reason, with the person when known. */
  static String by(String why, String who) {
    return who == null ? why : LedgerText.WHY_WHO.with(why, who);
  }

  private String correction(EntryBody body) {
    if (body instanceof TakenBack back) {
      return LedgerText.TAKES_BACK.with(Long.toString(back.entry()));
    } else if (body instanceof Restored again) {
      return LedgerText.RESTORES.with(Long.toString(again.entry()));
    } else if (body instanceof Moved moved) {
      return LedgerText.MOVES.with(Long.toString(moved.entry()), place(moved.position()));
    } else if (body instanceof Chosen choice) {
      return LedgerText.CHOOSES.with(place(choice.position()));
    }
    return body instanceof Amended ? LedgerText.AMENDS.with() : filing(body);
  }

  private String filing(EntryBody body) {
    if (body instanceof Filed pass) {
      return LedgerText.FILED.with(
          pass.ring(),
          Integer.toString(pass.cylinder()),
          Integer.toString(pass.turns()),
          gap(pass.beforeMm()) + " \u2192 " + gap(pass.afterMm()));
    }
    return body instanceof Withdrawn withdrawn
        ? LedgerText.WITHDRAWN.with(Long.toString(withdrawn.entry()))
        : LedgerText.OTHER.with();
  }

  /** A gap that was noted; as it stands there when it is no number. */
  private String gap(String text) {
    return PassCheck.gapMm(text).map(lengths::size).orElse(text);
  }

  private static String why(EntryBody body) {
    if (body instanceof SampleRefused refused) {
      return Told.recorded(refused.why());
    } else if (body instanceof LineBroke fault) {
      return Told.recorded(fault.why());
    } else if (body instanceof TakenBack back) {
      return by(back.why(), back.who());
    } else if (body instanceof Restored again) {
      return by(again.why(), again.who());
    } else if (body instanceof Moved moved) {
      return by(moved.why(), moved.who());
    } else if (body instanceof Chosen choice) {
      return by(choice.why(), choice.who());
    } else if (body instanceof Amended amended) {
      return by(amended.why(), amended.who());
    } else if (body instanceof Filed pass) {
      return pass.who();
    } else if (body instanceof Withdrawn withdrawn) {
      return by(withdrawn.why(), withdrawn.who());
    }
    return body instanceof SessionResumed resumed ? resumed.line() : "";
  }
}
