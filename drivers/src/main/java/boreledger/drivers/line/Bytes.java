package boreledger.drivers.line;

import java.util.Arrays;
import java.util.HexFormat;

/**
 * An immutable run of bytes, such as {@code 2b302e3031320d0a}: what a line delivered, kept as it
 * came.
 *
 * <p>Two runs are equal when their bytes are. {@code ofHex(x.toHex())} equals {@code x}.
 */
public final class Bytes {
  /** No bytes at all. */
  public static final Bytes EMPTY = new Bytes(new byte[0]);

  private final byte[] content;

  private Bytes(byte[] content) {
    this.content = content;
  }

  /** Copies an array. */
  public static Bytes of(byte[] content) {
    return of(content, 0, content.length);
  }

  /** Copies a part of an array: {@code length} bytes from {@code start}. */
  public static Bytes of(byte[] content, int start, int length) {
    return length == 0 ? EMPTY : new Bytes(Arrays.copyOfRange(content, start, start + length));
  }

  /**
   * Reads lower or upper case hexadecimal digits without separators.
   *
   * @throws IllegalArgumentException if the text has an odd length or a character that is no digit
   */
  public static Bytes ofHex(String hex) {
    return of(HexFormat.of().parseHex(hex));
  }

  /** The number of bytes. */
  public int size() {
    return content.length;
  }

  /** One byte as 0 to 255. */
  public int at(int index) {
    return Byte.toUnsignedInt(content[index]);
  }

  /** The bytes from {@code start} up to, not including, {@code end}. */
  public Bytes slice(int start, int end) {
    return of(content, start, end - start);
  }

  /** These bytes followed by others. */
  public Bytes plus(Bytes next) {
    byte[] joined = Arrays.copyOf(content, content.length + next.content.length);
    System.arraycopy(next.content, 0, joined, content.length, next.content.length);
    return new Bytes(joined);
  }

  /** A copy as an array. */
  public byte[] toArray() {
    return content.clone();
  }

  /** Lower case hexadecimal digits without separators. */
  public String toHex() {
    return HexFormat.of().formatHex(content);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Bytes that && Arrays.equals(content, that.content);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(content);
  }

  @Override
  public String toString() {
    return toHex();
  }
}
