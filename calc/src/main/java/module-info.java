/** Pure computation: bores, rings, uncertainty, decisions. No files, no clock, no threads. */
module boreledger.calc {
  requires org.apache.commons.statistics.distribution;

  exports boreledger.calc.rock;
}
