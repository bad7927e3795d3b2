package boreledger.drivers.learn;

/** How an invented gauge writes a reading on its line. */
@FunctionalInterface
interface Wire {
  byte[] frame(Reading reading);
}
