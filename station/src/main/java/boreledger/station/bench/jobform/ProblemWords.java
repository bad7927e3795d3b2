package boreledger.station.bench.jobform;

import boreledger.station.bench.words.JobFormText;
import boreledger.station.job.DisplayUnit;
import boreledger.station.job.draft.Fault;
import boreledger.station.job.draft.Field;
import boreledger.station.job.draft.Kind;
import boreledger.station.job.draft.Problem;
import boreledger.station.job.draft.Section;
import java.util.regex.Matcher;

/** A problem in the words of the form: fields by their labels, not by their keys. */
final class ProblemWords {
  private ProblemWords() {}

  static String of(Field field, Problem problem, DisplayUnit unit) {
    if (problem instanceof Problem.Mistyped mistyped) {
      return fault(mistyped.fault(), field.kind());
    }
    String words = labelled(field.section(), ((Problem.Refused) problem).words());
    boolean inMm = field.kind().isLength() && unit == DisplayUnit.IN;
    return inMm ? JobFormText.IN_MM.with(words) : words;
  }

  private static String fault(Fault fault, Kind kind) {
    return switch (fault) {
      case MISSING -> JobFormText.MISSING.with();
      case NO_NUMBER -> (kind.isList() ? JobFormText.NO_NUMBERS : JobFormText.NO_NUMBER).with();
      case NO_COUNT -> JobFormText.NO_COUNT.with();
      case WHICH_COMMA -> JobFormText.WHICH_COMMA.with();
      case OTHER_UNIT -> JobFormText.OTHER_UNIT.with(units(kind));
    };
  }

  private static String units(Kind kind) {
    if (kind.isLength()) {
      return JobFormText.UNITS_LENGTH.with();
    }
    boolean hasUnit = kind == Kind.CELSIUS || kind == Kind.KELVIN || kind == Kind.ANGLES;
    return hasUnit ? new Rendering(kind, DisplayUnit.MM).symbol() : JobFormText.UNITS_NONE.with();
  }

  private static String labelled(Section section, String words) {
    String said = words;
    for (Field field : section.fields()) {
      String label = Matcher.quoteReplacement(FieldWords.of(field).label().with());
      String key = field.key();
      // A key that is an ordinary word as well is one only where a message names its subject.
      String where = key.contains("_") ? "\\b" : "(?:^|(?<=\\bof )|(?<=^missing ))";
      said = said.replaceAll(where + key + "\\b", label);
    }
    return said.replaceAll(" in \\[+\\w+]+", "").replaceAll("\\[+([a-z_]+)]+", "$1");
  }
}
