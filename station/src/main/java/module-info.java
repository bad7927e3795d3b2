/** Job files, sessions, the ledger, results, the command line and the screens. */
module boreledger.station {
  requires boreledger.calc;
  requires boreledger.drivers;
  requires com.fasterxml.jackson.databind;
  requires info.picocli;
  requires java.sql;
  requires javafx.controls;
  requires org.xerial.sqlitejdbc;
}
