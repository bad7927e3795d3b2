package boreledger.station.bench.start;

import boreledger.drivers.serial.PortIdentity;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.StartText;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** The port, typed or chosen among those that the system lists. */
final class PortPane extends VBox {
  private final GaugeChoice gauge;
  private final VBox ports = new VBox();

  PortPane(GaugeChoice gauge) {
    this.gauge = gauge;
    getStyleClass().add(Styles.FIELDS);
    ports.getStyleClass().add(Styles.FIELD);
    TextField port = new TextField();
    port.setId("port");
    port.setPromptText(StartText.PORT_PROMPT.with());
    port.textProperty().bindBidirectional(gauge.port());
    getChildren().addAll(new Field(StartText.PORT.with(), port), ports);
    gauge.ports().addListener((ListChangeListener<PortIdentity>) change -> show());
    show();
  }

  private void show() {
    ports.getChildren().clear();
    for (PortIdentity each : gauge.ports()) {
      Hyperlink link = new Hyperlink(each.path() + "  " + each.description());
      link.getStyleClass().add(Styles.RECENT);
      link.setOnAction(pressed -> gauge.port().set(each.path()));
      ports.getChildren().add(link);
    }
    if (gauge.ports().isEmpty()) {
      Label none = Words.label(null, Styles.MUTED);
      none.setText(StartText.NO_PORTS.with());
      ports.getChildren().add(none);
    }
    Hyperlink again = new Hyperlink(StartText.LOOK_AGAIN.with());
    again.getStyleClass().add(Styles.RECENT);
    again.setOnAction(pressed -> gauge.lookForPorts());
    ports.getChildren().add(again);
  }
}
