/** Lines, framers, decoders, gauge profiles, pick rules and the capture queue. */
module boreledger.drivers {
  requires boreledger.calc;
  requires com.fasterxml.jackson.databind;
  requires com.fazecast.jSerialComm;
  requires jdk.net;
  requires org.tomlj;

  exports boreledger.drivers.capture;
  exports boreledger.drivers.decoder;
  exports boreledger.drivers.file;
  exports boreledger.drivers.footswitch;
  exports boreledger.drivers.framer;
  exports boreledger.drivers.gauge;
  exports boreledger.drivers.keyboard;
  exports boreledger.drivers.learn;
  exports boreledger.drivers.line;
  exports boreledger.drivers.net;
  exports boreledger.drivers.pick;
  exports boreledger.drivers.practice;
  exports boreledger.drivers.profile;
  exports boreledger.drivers.queue;
  exports boreledger.drivers.serial;
}
