package boreledger.station.ledger;

import boreledger.drivers.line.Bytes;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** The end of the chain: the last entry's number and hash. */
record Head(long seq, Bytes hash) {
  /** The head of a ledger without entries. */
  static final Head NONE = new Head(0, Chain.ORIGIN);

  static Head of(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery("SELECT seq, hash FROM entry ORDER BY seq DESC LIMIT 1")) {
      return row.next() ? new Head(row.getLong(1), Bytes.of(row.getBytes(2))) : NONE;
    }
  }

  Head next(String body) {
    return new Head(seq + 1, Chain.link(hash, seq + 1, body));
  }
}
