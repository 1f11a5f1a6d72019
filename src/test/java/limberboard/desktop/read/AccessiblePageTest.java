package limberboard.desktop.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** A page as somebody who listens to it meets it. */
class AccessiblePageTest {
  @TempDir Path folder;

  private static List<AccessibleContext> all(AccessibleContext from, AccessibleRole role) {
    List<AccessibleContext> found = new ArrayList<>();
    for (int i = 0; i < from.getAccessibleChildrenCount(); i++) {
      Accessible child = from.getAccessibleChild(i);
      AccessibleContext context = child.getAccessibleContext();
      assertThat(context.getAccessibleIndexInParent()).isEqualTo(i);
      assertThat(context.getAccessibleParent().getAccessibleContext()).isSameAs(from);
      if (context.getAccessibleRole() == role) {
        found.add(context);
      }
      found.addAll(all(context, role));
    }
    return found;
  }

  private static List<String> names(AccessibleContext page, AccessibleRole role) {
    return all(page, role).stream().map(AccessibleContext::getAccessibleName).toList();
  }

  private static List<String> elements(Document document, String... names) {
    List<String> texts = new ArrayList<>();
    NodeList every = document.getElementsByTagName("*");
    for (int i = 0; i < every.getLength(); i++) {
      if (List.of(names).contains(every.item(i).getNodeName())) {
        texts.add(every.item(i).getTextContent().strip().replaceAll("[\\s\u00a0]+", " "));
      }
    }
    return texts;
  }

  private static PageView view(Rendered rendered, List<String> followed) {
    PageView view = new PageView(followed::add);
    view.show(PageLayout.of(rendered, 600));
    return view;
  }

  @Test
  void everyPageReadsAsItsHeadingsItemsAndLinks() {
    LaidPages pages = new LaidPages(folder).with("topics/all-sorts.md", LaidPages.ALL_SORTS);
    for (String id : List.of("replace-gasket", "wet-locker", "gasket-strip", "torch", "dinghy")) {
      Rendered rendered = pages.rendered(id);
      AccessibleContext page = view(rendered, new ArrayList<>()).getAccessibleContext();
      assertThat(page.getAccessibleRole()).isEqualTo(AccessibleRole.HTML_CONTAINER);
      assertThat(names(page, AccessibleRole.HEADER))
          .as(id)
          .isEqualTo(elements(rendered.document(), "h1", "h2", "h3", "h4"));
      assertThat(names(page, AccessibleRole.HYPERLINK))
          .as(id)
          .isEqualTo(elements(rendered.document(), "a"));
      assertThat(names(page, AccessibleRole.LIST_ITEM))
          .as(id)
          .hasSameSizeAs(elements(rendered.document(), "li"));
      assertThat(names(page, AccessibleRole.ICON))
          .as(id)
          .hasSameSizeAs(elements(rendered.document(), "img"));
    }
  }

  @Test
  void listsStandInListsAndCellsInTables() {
    Rendered rendered =
        new LaidPages(folder)
            .with("topics/all-sorts.md", LaidPages.ALL_SORTS)
            .rendered("all-sorts");
    AccessibleContext page = view(rendered, new ArrayList<>()).getAccessibleContext();
    assertThat(all(page, AccessibleRole.LIST)).hasSize(2);
    AccessibleContext outer = all(page, AccessibleRole.LIST).get(0);
    assertThat(outer.getAccessibleChildrenCount()).isEqualTo(3);
    assertThat(names(outer, AccessibleRole.LIST_ITEM))
        .containsExactly(
            "1. Look at the hose.",
            "2. Turn the nut:",
            "by hand",
            "then by half a turn",
            "3. Look again.");
    AccessibleContext table = all(page, AccessibleRole.TABLE).get(0);
    assertThat(names(table, AccessibleRole.COLUMN_HEADER)).containsExactly("Hose", "Clip");
    assertThat(names(table, AccessibleRole.LABEL))
        .containsExactly("19 mm", "small", "25 mm", "large");
  }

  @Test
  void aLinkCanBeFollowedAndAParagraphReadLetterByLetter() {
    Rendered rendered =
        new LaidPages(folder)
            .with("topics/all-sorts.md", LaidPages.ALL_SORTS)
            .rendered("all-sorts");
    List<String> followed = new ArrayList<>();
    AccessibleContext page = view(rendered, followed).getAccessibleContext();
    AccessibleContext link = all(page, AccessibleRole.HYPERLINK).get(0);
    assertThat(link.getAccessibleName()).isEqualTo("about the hose");
    assertThat(link.getAccessibleAction().doAccessibleAction(0)).isTrue();
    assertThat(followed).containsExactly("page:tighten-hose");
    AccessibleContext paragraph =
        all(page, AccessibleRole.PARAGRAPH).stream()
            .filter(found -> found.getAccessibleName().startsWith("Read about"))
            .findFirst()
            .orElseThrow();
    AccessibleText text = paragraph.getAccessibleText();
    assertThat(text.getAtIndex(AccessibleText.WORD, 0)).isEqualTo("Read");
    assertThat(text.getAfterIndex(AccessibleText.WORD, 0)).isEqualTo(" ");
    assertThat(text.getAtIndex(AccessibleText.CHARACTER, 5)).isEqualTo("a");
    assertThat(text.getBeforeIndex(AccessibleText.CHARACTER, 5)).isEqualTo(" ");
    assertThat(text.getCharCount()).isEqualTo(paragraph.getAccessibleName().length());
    assertThat(text.getCharacterBounds(5).width).isPositive();
  }
}
