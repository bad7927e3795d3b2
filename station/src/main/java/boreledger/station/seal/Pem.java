package boreledger.station.seal;

import boreledger.drivers.line.Bytes;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Blocks of base64 between lines that name them, as RFC 7468 lays them down. */
final class Pem {
  private static final int COLUMNS = 64;

  private Pem() {}

  static String block(String label, Bytes content) {
    byte[] end = {'\n'};
    String base64 = Base64.getMimeEncoder(COLUMNS, end).encodeToString(content.toArray());
    return "-----BEGIN " + label + "-----\n" + base64 + "\n-----END " + label + "-----\n";
  }

  /**
   * The first block of that name.
   *
   * @throws IllegalArgumentException if its content is no base64
   */
  static Optional<Bytes> find(String label, String text) {
    Matcher block =
        Pattern.compile(
                "-----BEGIN " + label + "-----(.*?)-----END " + label + "-----", Pattern.DOTALL)
            .matcher(text);
    return block.find()
        ? Optional.of(Bytes.of(Base64.getMimeDecoder().decode(block.group(1))))
        : Optional.empty();
  }
}
