package limberboard.desktop.workspace.share;

import java.awt.Component;
import java.util.Optional;
import javax.swing.JTextField;
import limberboard.desktop.parts.FieldsDialog;

/** Asks in a dialog with what the workspace is to be shared. */
public record AddressDialog(Component above) implements ShareOutside.AddressQuestion {
  @Override
  public Optional<String> ask() {
    FieldsDialog dialog =
        new FieldsDialog(
            above,
            "With what is it shared?",
            "An ordinary Git address: a folder that others reach too, or one that begins with"
                + " ssh:// or https://. It is remembered for this workspace. A folder that is not"
                + " there is made when you push.",
            "Share with it");
    JTextField address = dialog.field("Address", "share-address", "");
    return dialog.ask() && !address.getText().isBlank()
        ? Optional.of(address.getText().strip())
        : Optional.empty();
  }
}
