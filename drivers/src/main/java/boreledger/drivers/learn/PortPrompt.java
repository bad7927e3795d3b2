package boreledger.drivers.learn;

/** The person at the gauge, who is told what to do. */
@FunctionalInterface
public interface PortPrompt {
  /** Says one line. */
  void say(String line);
}
