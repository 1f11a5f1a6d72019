package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JToolTip;
import javax.swing.plaf.basic.BasicHTML;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.look.ThemeChoice;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A workspace in which every title, name and note begins as a page would and names a picture on a
 * server of this machine: it stays text everywhere, and nobody asks the server for anything.
 */
class HostileNamesWindowTest {
  @TempDir Path folder;
  private final AtomicInteger asked = new AtomicInteger();
  private ServerSocket server;
  private SmallWindow window;

  @BeforeEach
  void open() throws IOException {
    server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    Thread listening = new Thread(this::listen, "hostile-names-server");
    listening.setDaemon(true);
    listening.start();
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    hostile(folder);
    window = SmallWindow.open(folders, new Memory(new Forgetful()));
    assertThat(desk().session().workspace().library().pages()).isNotEmpty();
  }

  @AfterEach
  void close() throws IOException {
    if (window != null) {
      window.close();
    }
    server.close();
  }

  private void listen() {
    while (!server.isClosed()) {
      try {
        server.accept().close();
        asked.incrementAndGet();
      } catch (IOException e) {
        return;
      }
    }
  }

  private String page(String text) {
    return "<html><b>"
        + text
        + "</b><img src='http://127.0.0.1:"
        + server.getLocalPort()
        + "/"
        + text.hashCode()
        + ".png'>";
  }

  private void hostile(Path workspace) throws IOException {
    try (Stream<Path> files = Files.walk(workspace)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (file.toString().endsWith(".md") || file.toString().endsWith(".yaml")) {
          String text = Files.readString(file);
          text =
              java.util.regex.Pattern.compile("\\b(title|name|ask|summary|note): ([^,}\"\\n]+)")
                  .matcher(text)
                  .replaceAll(
                      found -> found.group(1) + ": \"" + page(found.group(2).strip()) + "\"");
          Files.writeString(file, text);
        }
      }
    }
    Path log = workspace.resolve("boats/knot/log.csv");
    Files.writeString(log, Files.readString(log).replace("with a new strip", page("strip")));
  }

  private WindowAssembly desk() {
    return window.desk();
  }

  @Test
  void noComponentTakesATextForAPage() {
    List<String> seen = new ArrayList<>();
    for (ThemeChoice theme : ThemeChoice.values()) {
      window.act(() -> desk().settings().theme(theme));
      window.act(() -> desk().session().choose(Optional.of("knot")));
      look(seen);
      window.act(() -> desk().navigator().trace("wet-locker"));
      look(seen);
      window.act(() -> desk().navigator().openPage("replace-gasket"));
      look(seen);
      window.act(() -> desk().window().go(desk().upkeepPlace()));
      pressEach(seen, "Due", "Log", "List", "Shopping", "Rigging", "Workings", "Time line");
      window.act(() -> desk().navigator().openBoat("knot"));
      look(seen);
      window.act(() -> desk().search().type("locker"));
      look(seen);
    }
    assertThat(seen).as("texts that would have been pages").hasSizeGreaterThan(20);
    assertThat(asked).as("pictures asked for").hasValue(0);
  }

  private void pressEach(List<String> seen, String... names) {
    List<AbstractButton> buttons =
        window.showing().stream()
            .filter(AbstractButton.class::isInstance)
            .map(AbstractButton.class::cast)
            .filter(button -> List.of(names).contains(button.getText()))
            .toList();
    assertThat(buttons).isNotEmpty();
    for (AbstractButton button : buttons) {
      window.act(button::doClick);
      look(seen);
    }
  }

  /** Looks at every component there is, shown or not, with its tool tip and what it draws with. */
  private void look(List<String> seen) {
    window.until("nothing is being done", () -> desk().session().isRead());
    window.act(
        () -> {
          JFrame frame = desk().window().frame();
          frame.paint(frame.getGraphics());
          walk(frame.getRootPane(), seen);
        });
  }

  private static void walk(Container container, List<String> seen) {
    for (Component child : container.getComponents()) {
      if (child instanceof JComponent component) {
        notAPage(component);
        text(component).filter(BasicHTML::isHTMLString).ifPresent(seen::add);
        tip(component).filter(BasicHTML::isHTMLString).ifPresent(seen::add);
        menu(component, seen);
      }
      if (child instanceof Container nested) {
        walk(nested, seen);
      }
    }
  }

  private static void menu(JComponent component, List<String> seen) {
    if (component.getComponentPopupMenu() != null) {
      walk(component.getComponentPopupMenu(), seen);
    }
  }

  private static Optional<String> text(JComponent component) {
    if (component instanceof JLabel label) {
      return Optional.ofNullable(label.getText());
    }
    return component instanceof AbstractButton button
        ? Optional.ofNullable(button.getText())
        : Optional.empty();
  }

  private static Optional<String> tip(JComponent component) {
    String text = component.getToolTipText();
    JToolTip tip = component.createToolTip();
    tip.setTipText(text);
    notAPage(tip);
    return Optional.ofNullable(text);
  }

  private static void notAPage(JComponent component) {
    assertThat(component.getClientProperty(BasicHTML.propertyKey))
        .as(component.getClass() + " " + text(component))
        .isNull();
  }

  @Test
  void neitherDoQuestionsAndToolTips() {
    window.act(
        () -> {
          String hostile = page("name");
          walk(
              new JOptionPane("<html>" + hostile, JOptionPane.QUESTION_MESSAGE), new ArrayList<>());
          JToolTip tip = new JToolTip();
          tip.setTipText(hostile);
          notAPage(tip);
          tip.getPreferredSize();
          JLabel later = new JLabel();
          later.setText(hostile);
          notAPage(later);
          assertThat(later.getPreferredSize().width)
              .as("width of the text as written")
              .isPositive();
        });
    assertThat(asked).hasValue(0);
  }
}
