package limberboard.desktop.letters;

import java.util.Comparator;
import java.util.List;
import limberboard.desktop.parts.ChoiceBox;
import limberboard.desktop.parts.Column;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;

/** Adds a symptom of which the letter tells and that was not recognised. */
final class SymptomChoiceRow extends Column {
  SymptomChoiceRow(Understanding letter, LetterModel model) {
    super(2);
    List<Page<Symptom>> others =
        letter.workspace().library().all(Symptom.class).stream()
            .filter(page -> !letter.symptoms().contains(page.id()))
            .filter(page -> letter.fits(page.id()))
            .sorted(Comparator.comparing(Page::title))
            .toList();
    ChoiceBox<Page<Symptom>> box =
        new ChoiceBox<Page<Symptom>>(
                "letter-other-symptom",
                "Another symptom",
                Page::title,
                page -> model.symptom(page.id(), true))
            .asking("Add another symptom …");
    box.show(others, null);
    add(box);
  }
}
