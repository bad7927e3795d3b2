package boreledger.drivers.profile;

import boreledger.drivers.line.Bytes;

/**
 * How a gauge is asked for a value.
 *
 * @param request what is sent to it; not empty
 * @param everyMs how often, in milliseconds, positive; null when only on a trigger
 * @param answerWithinMs how long an answer is waited for, in milliseconds; positive
 * @param pauseMs how long the line must have been silent before a request, in milliseconds
 */
public record AskSpec(Bytes request, Double everyMs, double answerWithinMs, double pauseMs) {
  /** How long an answer is waited for when a profile does not say. */
  public static final double ANSWER_WITHIN_MS = 1000;
}
