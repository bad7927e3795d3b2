package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Text;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.PasswordField;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;

/** Checking and sealing on one side, and what came of it on the other. */
final class AuditPane extends GridPane {
  private static final double ASKING_PERCENT = 38;

  private final AuditModel model;

  AuditPane(AuditModel model, Label file) {
    this.model = model;
    getStyleClass().add(Styles.LEDGER_COLUMNS);
    getColumnConstraints().addAll(column(ASKING_PERCENT), column(100 - ASKING_PERCENT));
    RowConstraints row = new RowConstraints();
    row.setVgrow(Priority.ALWAYS);
    getRowConstraints().add(row);
    VBox asking = new VBox(auditCard(file), sealCard());
    asking.getStyleClass().add(Styles.LEDGER_SIDE);
    ScrollPane scroll = new ScrollPane(asking);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    add(scroll, 0, 0);
    add(outcome(), 1, 0);
  }

  private Card auditCard(Label file) {
    Button start = new Button(LedgerText.AUDIT_START.with());
    start.setId("ledger-audit");
    start.setOnAction(pressed -> model.audit());
    start.disableProperty().bind(model.running());
    return new Card(LedgerText.AUDIT_TITLE.with(), muted(LedgerText.AUDIT_WHAT), file, start);
  }

  private Card sealCard() {
    TextField name = new TextField();
    name.setId("ledger-seal-name");
    name.textProperty().bindBidirectional(model.name());
    PasswordField passphrase = new PasswordField();
    passphrase.setId("ledger-seal-passphrase");
    passphrase.setPromptText(LedgerText.SEAL_PASSPHRASE_PROMPT.with());
    passphrase.textProperty().bindBidirectional(model.passphrase());
    Button start = new Button(LedgerText.SEAL_START.with());
    start.setId("ledger-seal");
    start.setOnAction(pressed -> model.seal());
    start.disableProperty().bind(model.running());
    return new Card(
        LedgerText.SEAL_TITLE.with(),
        muted(LedgerText.SEAL_WHAT),
        new Field(LedgerText.WHO.with(), name),
        new Field(LedgerText.SEAL_PASSPHRASE.with(), passphrase),
        start);
  }

  private Card outcome() {
    Sign sign = new Sign(Sign.Kind.WAITING);
    model.verdict().subscribe(verdict -> sign.show(kind(verdict)));
    Label saying = Words.label("ledger-audit-saying", Styles.LEDGER_SAYING);
    saying.textProperty().bind(model.saying());
    Button stop = new Button(LedgerText.AUDIT_STOP.with());
    stop.setId("ledger-audit-stop");
    stop.setMinWidth(USE_PREF_SIZE);
    stop.setOnAction(pressed -> model.stop());
    HBox head = new HBox(sign, saying, Showing.when(model.running(), stop));
    head.getStyleClass().add(Styles.LEDGER_HEAD);
    HBox.setHgrow(saying, Priority.ALWAYS);
    saying.setMaxWidth(Double.MAX_VALUE);
    ProgressBar bar = new ProgressBar();
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setAccessibleText(LedgerText.AUDIT_PROGRESS.with());
    bar.progressProperty().bind(model.share());
    ListView<AuditLine> lines = new ListView<>(model.lines());
    lines.setId("ledger-audit-lines");
    lines.getStyleClass().add(Styles.LEDGER_LIST);
    lines.setAccessibleText(LedgerText.AUDIT_LINES.with());
    lines.setCellFactory(view -> new AuditCell());
    VBox.setVgrow(lines, Priority.ALWAYS);
    return new Card(
        LedgerText.AUDIT_LINES.with(),
        head,
        Showing.when(model.running(), bar),
        Showing.when(Bindings.isNotEmpty(model.lines()), lines));
  }

  private static Sign.Kind kind(AuditVerdict verdict) {
    return switch (verdict) {
      case NONE -> Sign.Kind.WAITING;
      case INTACT -> Sign.Kind.TAKEN;
      case FINDINGS -> Sign.Kind.REFUSED;
      case FAILED -> Sign.Kind.CAUTION;
    };
  }

  private static Label muted(Text words) {
    Label label = Words.label(null, Styles.MUTED);
    label.setText(words.with());
    return label;
  }

  private static ColumnConstraints column(double percent) {
    ColumnConstraints column = new ColumnConstraints();
    column.setPercentWidth(percent);
    return column;
  }
}
