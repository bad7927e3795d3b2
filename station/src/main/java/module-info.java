/** Job files, sessions, the ledger, results, the command line and the screens. */
module boreledger.station {
  requires boreledger.calc;
  requires boreledger.drivers;
  requires com.fasterxml.jackson.core;
  requires com.fasterxml.jackson.databind;
  requires com.fasterxml.jackson.datatype.jsr310;
  requires com.google.zxing;
  requires info.picocli;
  requires java.desktop;
  requires java.sql;
  requires javafx.controls;
  requires org.apache.commons.csv;
  // Wanted by the PDF library, which cannot say so itself.
  requires org.apache.commons.logging;
  requires org.apache.fontbox;
  requires org.apache.pdfbox;
  requires org.apache.pdfbox.io;
  requires org.xerial.sqlitejdbc;

  exports boreledger.station.bench to
      javafx.graphics;

  opens boreledger.station.app to
      com.fasterxml.jackson.databind;
  opens boreledger.station.audit to
      com.fasterxml.jackson.databind;
  opens boreledger.station.cli to
      com.fasterxml.jackson.databind,
      info.picocli;
  opens boreledger.station.keeping to
      com.fasterxml.jackson.databind;
  opens boreledger.station.ledger to
      com.fasterxml.jackson.databind;
  opens boreledger.station.plan to
      com.fasterxml.jackson.databind;
  opens boreledger.station.results to
      com.fasterxml.jackson.databind;
}
