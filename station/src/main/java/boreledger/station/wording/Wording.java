package boreledger.station.wording;

import boreledger.station.plan.Position;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Puts statements into words.
 *
 * @param vocabulary whose language
 * @param figures how numbers are written
 */
public record Wording(Vocabulary vocabulary, Figures figures) {
  /** English with plain millimetres: the command line, its JSON, and sentences on paper. */
  public static final Wording PLAIN = new Wording(Vocabulary.ENGLISH, new PlainFigures());

  /** A statement, or a part of one, in words. */
  public String of(Part part) {
    if (part instanceof Statement statement) {
      String[] filled = statement.parts().stream().map(this::of).toArray(String[]::new);
      return vocabulary.say(statement.phrase(), filled);
    } else if (part instanceof Part.Length length) {
      return figures.length(length.mm());
    } else if (part instanceof Part.Difference difference) {
      return figures.difference(difference.mm());
    } else if (part instanceof Part.Depth depth) {
      return figures.depth(depth.mm());
    } else if (part instanceof Part.Ratio ratio) {
      return figures.ratio(ratio.value(), ratio.decimals());
    } else if (part instanceof Part.Place place) {
      return place(place.position());
    } else if (part instanceof Part.Several several) {
      return several.parts().stream().map(this::of).collect(Collectors.joining(", "));
    } else if (part instanceof Part.Recorded recorded) {
      return vocabulary.recorded(recorded.english());
    }
    return ((Part.Name) part).name();
  }

  /** Each of several in words. */
  public List<String> each(List<? extends Part> parts) {
    return parts.stream().map(this::of).toList();
  }

  private String place(Position position) {
    if (equals(PLAIN)) {
      return position.words();
    } else if (position instanceof Position.Bore bore) {
      return vocabulary.say(
          Phrase.PLACE_BORE,
          Integer.toString(bore.cylinder()),
          figures.depth(bore.depthMm()),
          bore.axis());
    } else if (position instanceof Position.Gap gap) {
      return vocabulary.say(
          Phrase.PLACE_GAP,
          Integer.toString(gap.cylinder()),
          figures.depth(gap.depthMm()),
          gap.ring());
    } else if (position instanceof Position.RingDepth ring) {
      return vocabulary.say(
          Phrase.PLACE_RING_DEPTH,
          Integer.toString(ring.cylinder()),
          figures.depth(ring.depthMm()),
          ring.ring(),
          figures.ratio(ring.clockDeg(), 0));
    }
    return vocabulary.say(check((Position.SettingCheck) position));
  }

  private static Phrase check(Position.SettingCheck check) {
    if (check.equals(Position.SettingCheck.OPENING)) {
      return Phrase.PLACE_OPENING;
    }
    return check.equals(Position.SettingCheck.CLOSING)
        ? Phrase.PLACE_CLOSING
        : Phrase.PLACE_RESUMING;
  }
}
