package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Choice;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.words.LedgerText;
import java.io.File;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** Where a file goes, and whether it may be written over one that is there. */
final class FilePart extends VBox {
  private final StringProperty file;
  private final BooleanProperty replace;

  FilePart(String id, StringProperty file, BooleanProperty replace) {
    this.file = file;
    this.replace = replace;
    getStyleClass().add(Styles.FIELDS);
    TextField typed = new TextField();
    typed.setId(id);
    typed.textProperty().bindBidirectional(file);
    Field field = new Field(LedgerText.SHEET_FILE.with(), typed);
    HBox.setHgrow(field, Priority.ALWAYS);
    Button choose = new Button(LedgerText.SHEET_CHOOSE.with());
    choose.setMinWidth(USE_PREF_SIZE);
    choose.setOnAction(pressed -> choose());
    HBox row = new HBox(field, choose);
    row.getStyleClass().add(Styles.LEDGER_FILE);
    Map<Boolean, String> replacing = new LinkedHashMap<>();
    replacing.put(false, LedgerText.SHEET_KEEP.with());
    replacing.put(true, LedgerText.SHEET_REPLACE.with());
    getChildren().addAll(row, new Choice<>(replacing, replace.asObject()));
  }

  private void choose() {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(LedgerText.SHEET_CHOOSE.with());
    chooser.setInitialFileName(new File(file.get()).getName());
    File chosen = chooser.showSaveDialog(getScene().getWindow());
    if (chosen != null) {
      // The dialogue has asked already whether to write over it.
      file.set(chosen.toString());
      replace.set(chosen.exists());
    }
  }
}
