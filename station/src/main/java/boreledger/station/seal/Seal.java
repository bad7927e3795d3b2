package boreledger.station.seal;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.EntryBody.Sealed;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;

/**
 * A person's signature over a ledger's head. The package's page gives its bytes.
 *
 * @param ledger the ledger's id
 * @param entry the number of the last entry that is sealed
 * @param head that entry's hash
 * @param key the public key, 32 bytes
 * @param signature 64 bytes
 */
public record Seal(
    String ledger, long entry, Bytes head, Instant time, String name, Bytes key, Bytes signature) {
  /** The first line of every seal. */
  public static final String FORMAT = "boreledger-seal/1";

  /** The longest name, so that a seal fits into a square code. */
  public static final int LONGEST_NAME = 80;

  private static final List<String> WORDS =
      List.of("ledger", "entry", "head", "time", "name", "key", "signature");

  /** What is no seal; the message says why. */
  public static final class NoSeal extends Exception {
    private static final long serialVersionUID = 1L;

    NoSeal(String why, Throwable cause) {
      super(why, cause);
    }
  }

  /**
   * Whether a seal can be signed with this name: not empty, not too long, no control characters, no
   * blanks at its ends.
   */
  public static boolean isName(String name) {
    return !name.isEmpty()
        && name.length() <= LONGEST_NAME
        && name.equals(name.strip())
        && name.codePoints().noneMatch(Seal::breaksLines);
  }

  private static boolean breaksLines(int codePoint) {
    int type = Character.getType(codePoint);
    return type == Character.CONTROL
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.SURROGATE;
  }

  /** A seal that is kept in a ledger. */
  public static Seal of(Sealed kept) throws NoSeal {
    return of(
        List.of(
            kept.ledger(),
            Long.toString(kept.entry()),
            kept.head(),
            kept.wall().toString(),
            kept.name(),
            kept.key(),
            kept.signature()));
  }

  /** The same as a ledger keeps it. */
  public Sealed kept() {
    return new Sealed(ledger, entry, head.toHex(), time, name, base64(key), base64(signature));
  }

  /** Reads a seal from the text of its file, or from its one line. */
  public static Seal parse(String text) throws NoSeal {
    List<String> lines = text.lines().toList();
    if (lines.size() == 1) {
      return parseLine(lines.get(0));
    }
    if (lines.size() != WORDS.size() + 1 || !lines.get(0).equals(FORMAT)) {
      throw new NoSeal("a seal has eight lines and begins with " + FORMAT, null);
    }
    List<String> values = new ArrayList<>();
    for (int i = 0; i < WORDS.size(); i++) {
      String word = WORDS.get(i) + " ";
      String line = lines.get(i + 1);
      if (!line.startsWith(word)) {
        throw new NoSeal("line " + (i + 2) + " does not begin with " + word.strip(), null);
      }
      values.add(line.substring(word.length()));
    }
    return of(values);
  }

  /** The text of its file. */
  public String text() {
    return signedText() + "signature " + base64(signature) + "\n";
  }

  /** All of it in one line. */
  public String line() {
    return String.join(
        " ",
        FORMAT,
        ledger,
        Long.toString(entry),
        head.toHex(),
        time.toString(),
        base64(key),
        base64(signature),
        name);
  }

  /** The public key as it is written. */
  public String keyText() {
    return base64(key);
  }

  /** Whether the signature is that key's for what the seal says. */
  public boolean isGenuine() {
    return Ed25519.isBy(key, signedBytes(), signature);
  }

  Bytes signedBytes() {
    return Bytes.of(signedText().getBytes(StandardCharsets.UTF_8));
  }

  Seal signed(Bytes by) {
    return new Seal(ledger, entry, head, time, name, key, by);
  }

  static String base64(Bytes bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes.toArray());
  }

  private String signedText() {
    return FORMAT
        + "\nledger "
        + ledger
        + "\nentry "
        + entry
        + "\nhead "
        + head.toHex()
        + "\ntime "
        + time
        + "\nname "
        + name
        + "\nkey "
        + base64(key)
        + "\n";
  }

  private static Seal parseLine(String line) throws NoSeal {
    List<String> parts = Arrays.asList(line.split(" ", WORDS.size() + 1));
    if (parts.size() != WORDS.size() + 1 || !parts.get(0).equals(FORMAT)) {
      throw new NoSeal("a seal in one line has eight parts and begins with " + FORMAT, null);
    }
    return of(
        List.of(
            parts.get(1),
            parts.get(2),
            parts.get(3),
            parts.get(4),
            parts.get(7),
            parts.get(5),
            parts.get(6)));
  }

  private static Seal of(List<String> values) throws NoSeal {
    try {
      return new Seal(
          values.get(0),
          Long.parseLong(values.get(1)),
          Bytes.ofHex(values.get(2)),
          Instant.parse(values.get(3)),
          values.get(4),
          bytes(values.get(5)),
          bytes(values.get(6)));
    } catch (IllegalArgumentException | DateTimeException e) {
      throw new NoSeal("a value of the seal cannot be read: " + e.getMessage(), e);
    }
  }

  private static Bytes bytes(String base64) {
    return Bytes.of(Base64.getUrlDecoder().decode(base64));
  }
}
