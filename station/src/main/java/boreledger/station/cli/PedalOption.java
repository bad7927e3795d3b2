package boreledger.station.cli;

import boreledger.station.app.Pedal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code PORT=ACTION} or {@code PORT=TEXT:ACTION}; a port may hold colons. */
final class PedalOption implements ITypeConverter<Pedal> {
  private static final Pattern FORM =
      Pattern.compile("(?<port>[^=]+)=(?:(?<text>.+):)?(?<action>[a-z]+)");

  @Override
  public Pedal convert(String text) {
    Matcher parts = FORM.matcher(text);
    if (!parts.matches()) {
      throw new TypeConversionException("'" + text + "' is not PORT=ACTION or PORT=TEXT:ACTION");
    }
    String word = parts.group("action");
    Pedal.Action action =
        Stream.of(Pedal.Action.values())
            .filter(each -> each.word().equals(word))
            .findFirst()
            .orElseThrow(() -> new TypeConversionException("'" + word + "' is not " + words()));
    String sent = parts.group("text");
    return new Pedal(parts.group("port"), sent == null ? null : sent.strip(), action);
  }

  private static String words() {
    return Stream.of(Pedal.Action.values())
        .map(Pedal.Action::word)
        .collect(Collectors.joining(", ", "one of ", ""));
  }
}
