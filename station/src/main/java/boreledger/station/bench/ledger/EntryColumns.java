package boreledger.station.bench.ledger;

import boreledger.station.app.EntryLine;
import boreledger.station.app.Standing;
import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Text;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;

/** The columns of a session's table; those with sentences share what room is left. */
final class EntryColumns {
  private static final double ENTRY_EM = 4.9;
  private static final double WHEN_EM = 6.2;
  private static final double VALUE_EM = 8.8;
  private static final double BAR_EM = 1.8;
  private static final double SIGN_EM = 2.1;
  private static final double PLACES_SHARE = 0.6;

  /** What a column holds. */
  private enum Kind {
    PLAIN,
    VALUE,
    STATE
  }

  private final TableView<EntryLine> table;
  private final ObservableValue<EntryWords> words;
  private final Label oneEm;

  /**
   * Columns of a table.
   *
   * @param oneEm a label whose font is one em
   */
  EntryColumns(TableView<EntryLine> table, ObservableValue<EntryWords> words, Label oneEm) {
    this.table = table;
    this.words = words;
    this.oneEm = oneEm;
  }

  void add() {
    TableColumn<EntryLine, EntryLine> entry =
        column(LedgerText.COLUMN_ENTRY, line -> Long.toString(line.entry().seq()), Kind.PLAIN);
    TableColumn<EntryLine, EntryLine> when =
        column(LedgerText.COLUMN_WHEN, line -> words.getValue().when(line), Kind.PLAIN);
    TableColumn<EntryLine, EntryLine> what =
        column(LedgerText.COLUMN_WHAT, line -> words.getValue().what(line), Kind.PLAIN);
    TableColumn<EntryLine, EntryLine> value =
        column(LedgerText.COLUMN_VALUE, line -> words.getValue().value(line), Kind.VALUE);
    TableColumn<EntryLine, EntryLine> state =
        column(LedgerText.COLUMN_STATE, line -> words.getValue().state(line), Kind.STATE);
    table.getColumns().add(entry);
    table.getColumns().add(when);
    table.getColumns().add(what);
    table.getColumns().add(value);
    table.getColumns().add(state);
    Runnable fit =
        () -> {
          double emPx = oneEm.getFont().getSize();
          double leftPx = table.getWidth() - (ENTRY_EM + WHEN_EM + VALUE_EM + BAR_EM) * emPx;
          entry.setPrefWidth(ENTRY_EM * emPx);
          when.setPrefWidth(WHEN_EM * emPx);
          what.setPrefWidth(PLACES_SHARE * leftPx);
          value.setPrefWidth(VALUE_EM * emPx);
          state.setPrefWidth((1 - PLACES_SHARE) * leftPx);
        };
    table.widthProperty().subscribe(fit);
    oneEm.fontProperty().subscribe(fit);
  }

  private TableColumn<EntryLine, EntryLine> column(
      Text title, Function<EntryLine, String> said, Kind kind) {
    TableColumn<EntryLine, EntryLine> column = new TableColumn<>(title.with());
    column.setSortable(false);
    column.setReorderable(false);
    column.setMinWidth(1);
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue()));
    column.setCellFactory(made -> new Cell(said, kind));
    return column;
  }

  private Sign.Kind sign(EntryLine line) {
    return switch (line.standing()) {
      case IN_FORCE -> Sign.Kind.TAKEN;
      case READ_AGAIN -> Sign.Kind.QUIET;
      case TAKEN_BACK -> Sign.Kind.REFUSED;
      case NO_READING -> words.getValue().isCaution(line) ? Sign.Kind.CAUTION : Sign.Kind.NONE;
    };
  }

  private final class Cell extends TableCell<EntryLine, EntryLine> {
    private final Function<EntryLine, String> said;
    private final Kind kind;

    Cell(Function<EntryLine, String> said, Kind kind) {
      this.said = said;
      this.kind = kind;
      getStyleClass().add(Styles.LEDGER_CELL);
    }

    @Override
    protected void updateItem(EntryLine line, boolean empty) {
      super.updateItem(line, empty);
      String words = empty || line == null ? null : said.apply(line);
      setText(null);
      setGraphic(words == null ? null : graphic(line, words));
      setAccessibleText(words);
    }

    private Node graphic(EntryLine line, String words) {
      if (kind != Kind.STATE) {
        return Wrapped.words(this, words, 0, style(line));
      }
      HBox both =
          new HBox(new Sign(sign(line)), Wrapped.words(this, words, SIGN_EM, Styles.LEDGER_WORDS));
      both.getStyleClass().add(Styles.LEDGER_SIGNED);
      return both;
    }

    private String style(EntryLine line) {
      boolean counts =
          line.standing() == Standing.IN_FORCE || line.standing() == Standing.NO_READING;
      if (counts) {
        return Styles.LEDGER_WORDS;
      }
      return kind == Kind.VALUE ? Styles.LEDGER_STRUCK : Styles.LEDGER_PAST;
    }
  }
}
