package boreledger.station.app;

import boreledger.station.gauging.Wish;
import boreledger.station.gauging.Wish.By;

/**
 * A pedal of a foot switch and what it is for.
 *
 * @param port a serial port's path, {@code tcp://host:port}, or {@code keyboard}
 * @param text what the pedal sends, without its line ending; null for whatever comes from the port
 *     that is no other pedal's
 */
public record Pedal(String port, String text, Action action) {
  /** What a pedal can ask for. */
  public enum Action {
    /** The gauge is to send a reading now. */
    READ("read", new Wish.Read(By.FOOT_SWITCH)),
    /** The last reading is taken back, or restored. */
    BACK("back", new Wish.TakeBack(By.FOOT_SWITCH)),
    /** The present position waits until the end. */
    SKIP("skip", new Wish.Skip(By.FOOT_SWITCH)),
    /** The value that was held last is taken. */
    CONFIRM("confirm", new Wish.Confirm(null, By.FOOT_SWITCH)),
    /** The value that was held last is left. */
    LEAVE("leave", new Wish.Leave(null, By.FOOT_SWITCH));

    private final String word;
    private final Wish wish;

    Action(String word, Wish wish) {
      this.word = word;
      this.wish = wish;
    }

    /** As it is typed, such as {@code back}. */
    public String word() {
      return word;
    }

    Wish wish() {
      return wish;
    }
  }
}
