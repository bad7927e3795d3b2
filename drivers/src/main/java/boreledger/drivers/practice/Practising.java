package boreledger.drivers.practice;

/** A hand that practises, and waits to be told where to gauge. */
@FunctionalInterface
public interface Practising {
  /**
   * Says what to gauge next, or to do the last once more. What is being done is finished first. Any
   * thread may call.
   */
  void gauge(PracticeTask task);
}
