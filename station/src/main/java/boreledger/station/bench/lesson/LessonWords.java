package boreledger.station.bench.lesson;

import boreledger.drivers.learn.Candidate;
import boreledger.drivers.learn.Learned;
import boreledger.drivers.learn.NextValue;
import boreledger.drivers.learn.Open;
import boreledger.drivers.learn.ShownValue;
import boreledger.drivers.profile.LineSettings;
import boreledger.station.app.LessonEvent;
import boreledger.station.bench.words.LessonText;
import boreledger.station.bench.words.Text;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is known of a gauge, in the words of the window. */
final class LessonWords {
  private static final int MOST_READINGS = 4;
  private static final Map<Open, Text> OPEN =
      Map.of(
          Open.SIGN, LessonText.OPEN_SIGN,
          Open.INCH, LessonText.OPEN_INCH,
          Open.SIZES, LessonText.OPEN_SIZES);

  private LessonWords() {}

  static String value(ShownValue value) {
    return value.number().toPlainString() + " " + value.unit().symbol();
  }

  /** What is offered as the value shown: the one that was asked for. */
  static String offered(Learned learned) {
    NextValue next = learned.next();
    if (next == null) {
      return "";
    }
    return next.settles() == Open.INCH ? "0.500in" : next.mm().toPlainString();
  }

  static String listening(LessonEvent.Listening now) {
    LineSettings settings = now.settings();
    Text parity =
        switch (settings.parity()) {
          case EVEN -> LessonText.PARITY_EVEN;
          case ODD -> LessonText.PARITY_ODD;
          default -> LessonText.PARITY_NONE;
        };
    String at =
        LessonText.LISTENING.with(
            Integer.toString(settings.baud()),
            Integer.toString(settings.dataBits()),
            parity.with());
    return switch (now.because()) {
      case FIRST -> at;
      case SILENT -> LessonText.SILENT.with(at);
      case UNREADABLE -> LessonText.UNREADABLE.with(at);
    };
  }

  /** What to do now; empty when nothing more is needed. */
  static String ask(Learned learned, LessonSource.Kind source) {
    if (learned.certain()) {
      return LessonText.CERTAIN.with();
    }
    if (source == LessonSource.Kind.RECORDING) {
      return LessonText.ASK_RECORDING.with();
    }
    NextValue next = learned.next();
    return next.settles() == Open.INCH
        ? LessonText.ASK_INCH.with()
        : LessonText.ASK.with(next.mm().toPlainString());
  }

  /** Whether it is certain, and what is not. */
  static String verdict(LessonEvent.Told told, LessonSource.Kind source) {
    Learned learned = told.learned();
    int readings = learned.candidates().size();
    if (learned.certain()) {
      return LessonText.WHY_CERTAIN.with();
    } else if (readings == 0 && source == LessonSource.Kind.RECORDING) {
      return LessonText.NOT_ALL_NAMED.with();
    } else if (told.shown().isEmpty()) {
      return LessonText.NOTHING_SHOWN.with();
    } else if (told.shown().size() == 1 && readings == 0) {
      return LessonText.ONE_VALUE.with();
    } else if (readings == 0) {
      return LessonText.NO_READING.with();
    }
    String fits =
        readings == 1
            ? LessonText.ONE_READING.with()
            : LessonText.READINGS.with(Integer.toString(readings));
    String open =
        learned.open().stream()
            .sorted()
            .map(OPEN::get)
            .map(Text::with)
            .collect(Collectors.joining(" "));
    return open.isEmpty() ? fits : fits + " " + open;
  }

  /** The readings that fit, a line each, the likeliest first. */
  static List<String> readings(Learned learned) {
    List<String> readings =
        learned.candidates().stream().limit(MOST_READINGS).map(Candidate::words).toList();
    int more = learned.candidates().size() - readings.size();
    return more <= 0
        ? readings
        : Stream.concat(readings.stream(), Stream.of(LessonText.MORE.with(Integer.toString(more))))
            .toList();
  }

  static String shown(LessonEvent.Told told) {
    String values = told.shown().stream().map(LessonWords::value).collect(Collectors.joining(", "));
    return values.isEmpty() ? "" : LessonText.SO_FAR.with(values);
  }
}
