package boreledger.drivers.profile;

/**
 * Settings of a serial line.
 *
 * @param baud bits per second
 * @param dataBits 5 to 8
 * @param dtr whether the data-terminal-ready line is raised
 * @param rts whether the request-to-send line is raised
 */
public record LineSettings(
    int baud, int dataBits, Parity parity, StopBits stopBits, boolean dtr, boolean rts) {
  /** 9600 8N1 with both modem lines raised: what a profile without {@code [line]} gets. */
  public static final LineSettings DEFAULT =
      new LineSettings(9600, 8, Parity.NONE, StopBits.ONE, true, true);

  /** The parity bit. */
  public enum Parity {
    /** No parity bit. */
    NONE,
    /** An even number of ones. */
    EVEN,
    /** An odd number of ones. */
    ODD,
    /** Always one. */
    MARK,
    /** Always zero. */
    SPACE
  }

  /** The number of stop bits. */
  public enum StopBits {
    /** One. */
    ONE,
    /** One and a half. */
    ONE_AND_A_HALF,
    /** Two. */
    TWO
  }
}
