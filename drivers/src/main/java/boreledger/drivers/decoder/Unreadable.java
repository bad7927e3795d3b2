package boreledger.drivers.decoder;

/** A frame gives no value; the message is the clause for {@link Rejected#why()}. */
final class Unreadable extends Exception {
  private static final long serialVersionUID = 1L;

  Unreadable(String why) {
    super(why);
  }
}
