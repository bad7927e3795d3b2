/** Pure computation: bores, rings, uncertainty, decisions. No files, no clock, no threads. */
module boreledger.calc {
  requires org.apache.commons.statistics.distribution;

  exports boreledger.calc.bore;
  exports boreledger.calc.decision;
  exports boreledger.calc.feeler;
  exports boreledger.calc.filing;
  exports boreledger.calc.fit;
  exports boreledger.calc.gapping;
  exports boreledger.calc.geometry;
  exports boreledger.calc.input;
  exports boreledger.calc.match;
  exports boreledger.calc.oversize;
  exports boreledger.calc.ring;
  exports boreledger.calc.rock;
  exports boreledger.calc.study;
  exports boreledger.calc.uncertainty;
}
