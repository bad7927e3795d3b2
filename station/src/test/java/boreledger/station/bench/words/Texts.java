package boreledger.station.bench.words;

import java.util.stream.Stream;

/** All that the window says, whichever room says it. */
public final class Texts {
  private Texts() {}

  /** Every text. */
  public static Stream<Text> all() {
    return Stream.of(Text.class.getPermittedSubclasses())
        .flatMap(room -> Stream.of(room.getEnumConstants()))
        .map(Text.class::cast);
  }
}
