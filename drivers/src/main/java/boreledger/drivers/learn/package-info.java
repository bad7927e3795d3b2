/**
 * Learns a gauge's profile from what it sends while it shows known values.
 *
 * <p>{@link boreledger.drivers.learn.GaugeLearner} cuts the bytes in every way that could be meant,
 * reads each cut in every way that a profile can say, keeps the readings that give all the shown
 * values, and tries their profiles on the real framer and decoder. It is certain only when one is
 * left and nothing that matters is still unseen.
 */
package boreledger.drivers.learn;
