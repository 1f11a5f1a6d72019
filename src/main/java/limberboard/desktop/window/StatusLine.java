package limberboard.desktop.window;

import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Session;
import limberboard.words.CountWords;
import net.miginfocom.swing.MigLayout;

/** One line at the bottom: what is being done, or what there is. */
final class StatusLine extends JPanel {
  private static final int MOMENT = 250;
  private final JLabel words = new JLabel(" ");
  private final JProgressBar running = new JProgressBar();
  private final Timer pause = new Timer(MOMENT, e -> show(activity().now()));
  private final transient Activity activity;
  private final transient Session session;

  StatusLine(Activity activity, Session session) {
    super(new MigLayout("insets 3 14 5 14, fillx", "[][grow]"));
    this.activity = activity;
    this.session = session;
    running.setIndeterminate(true);
    running.getAccessibleContext().setAccessibleName("Working");
    words.putClientProperty("FlatLaf.style", "foreground: $Limberboard.quiet");
    add(running, "w 90lp!, hidemode 3");
    add(words, "growx, wmin 0");
    pause.setRepeats(false);
    activity.onChange(this::refresh);
    refresh();
  }

  private Activity activity() {
    return activity;
  }

  /** Brings the line up to date; work that is over in a moment is not mentioned. */
  void refresh() {
    if (activity.now().isEmpty()) {
      pause.stop();
      show(Optional.empty());
    } else if (!pause.isRunning()) {
      pause.restart();
    }
  }

  private void show(Optional<String> doing) {
    running.setVisible(doing.isPresent());
    words.setText(doing.map(what -> what + " …").orElseGet(this::atRest));
  }

  private String atRest() {
    if (!session.isRead()) {
      return "The library has not been read yet";
    }
    int pages = session.library().pages().size();
    int problems = session.workspace().problems().size();
    return CountWords.of(pages, "page")
        + ", "
        + CountWords.of(session.workspace().boats().size(), "boat")
        + (problems == 0
            ? ""
            : ", " + CountWords.of(problems, "problem") + " in the files: see Pages");
  }
}
