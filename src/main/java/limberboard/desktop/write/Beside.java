package limberboard.desktop.write;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.AspectButtons;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.write.state.OpenPage;

/** What stands beside the text: the page as it reads, or its header as a form. */
final class Beside {
  private final List<View> all;
  private final AspectButtons aspects;
  private final CardLayout cards = new CardLayout();
  private final JPanel shown = new JPanel(cards);
  private final JPanel panel = new JPanel(new BorderLayout(0, 8));
  private final Preview preview;
  private final HeaderForms header;
  private View now;

  Beside(Preview preview, HeaderForms header) {
    this.preview = preview;
    this.header = header;
    all = List.of(preview, header);
    aspects = new AspectButtons("write", all, this::look);
    now = preview;
    panel.setOpaque(false);
    shown.setOpaque(false);
    all.forEach(each -> shown.add(each.component(), each.id()));
    panel.add(aspects, BorderLayout.NORTH);
    panel.add(shown, BorderLayout.CENTER);
    aspects.mark(now);
  }

  JComponent component() {
    return panel;
  }

  /** Follows a page. */
  void show(OpenPage page) {
    preview.show(page);
    header.show(page);
  }

  void look(String id) {
    all.stream().filter(each -> each.id().equals(id)).findFirst().ifPresent(this::look);
  }

  private void look(View other) {
    now = other;
    cards.show(shown, other.id());
    aspects.mark(other);
    if (panel.isShowing()) {
      Later.run(() -> Sides.goTo(other.regions().get(0)));
    }
  }

  List<JComponent> regions() {
    List<JComponent> regions = new ArrayList<>();
    regions.add(aspects);
    regions.addAll(now.regions());
    return regions;
  }

  Optional<View.Find> find() {
    return now.find();
  }
}
