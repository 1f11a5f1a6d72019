package limberboard.desktop.workspace.share;

import java.awt.Component;
import java.awt.EventQueue;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JPasswordField;
import javax.swing.JTextField;
import limberboard.desktop.parts.FieldsDialog;
import limberboard.sharing.Asking;

/**
 * Asks in a dialog for a name and a password, which are used once and kept nowhere. Waits on the
 * thread that shares while the person answers.
 */
public record PasswordDialog(Component above) implements Asking {
  @Override
  public Optional<Answer> ask(String where, boolean again) {
    if (EventQueue.isDispatchThread()) {
      return asked(where, again);
    }
    AtomicReference<Optional<Answer>> answer = new AtomicReference<>(Optional.empty());
    try {
      EventQueue.invokeAndWait(() -> answer.set(asked(where, again)));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (InvocationTargetException e) {
      throw new IllegalStateException("the question could not be asked", e.getCause());
    }
    return answer.get();
  }

  private Optional<Answer> asked(String where, boolean again) {
    FieldsDialog dialog =
        new FieldsDialog(
            above,
            "Name and password",
            (again ? "That was refused. " : "")
                + where
                + " asks who you are. What you write is used this once and kept nowhere.",
            "Go on");
    JTextField name = dialog.field("Name", "share-name", "");
    JPasswordField secret = dialog.secret("Password or token", "share-secret");
    boolean given = dialog.ask() && !name.getText().isBlank();
    char[] letters = secret.getPassword();
    secret.setText("");
    return given ? Optional.of(new Answer(name.getText().strip(), letters)) : Optional.empty();
  }
}
