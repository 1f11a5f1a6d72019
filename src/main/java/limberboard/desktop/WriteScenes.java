package limberboard.desktop;

import limberboard.desktop.write.WritePlace;
import limberboard.desktop.write.state.OpenPage;

/** The states of the Write place that pictures are made of; nothing is saved. */
final class WriteScenes {
  private static final String PAGE = "rebed-deck-fitting";

  private WriteScenes() {}

  private static WritePlace place(WindowAssembly desk) {
    desk.go("write");
    desk.writePlace().model().open(PAGE);
    return desk.writePlace();
  }

  private static OpenPage page(WindowAssembly desk) {
    return place(desk).model().current().orElseThrow();
  }

  /** A link is typed to a page that is not there. */
  static void write(WindowAssembly desk) {
    OpenPage page = page(desk);
    String plain = page.text().plain();
    int body = page.text().body().from();
    String link = "See first [where it leaks](../symptoms/leaking-window-frame.md).\n\n";
    String typed = plain.substring(0, body) + link + plain.substring(body).stripLeading();
    desk.writePlace().model().replace(page, typed);
    page.goTo(body, body);
  }

  /** A step is typed that calls for cautions which the header does not have. */
  static void proofread(WindowAssembly desk) {
    OpenPage page = page(desk);
    String plain = page.text().plain();
    int at = plain.indexOf("\n1. ", page.text().body().from()) + "\n1. ".length();
    String typed = "Wipe the base with petrol, and grind the edge off. ";
    desk.writePlace().model().replace(page, plain.substring(0, at) + typed + plain.substring(at));
    page.goTo(at, at);
  }

  /** A symptom as a table. */
  static void table(WindowAssembly desk, boolean trying) {
    desk.go("write");
    desk.writePlace().model().open("clutch-slips");
    desk.writePlace().table(trying);
  }

  static void header(WindowAssembly desk) {
    page(desk);
    desk.writePlace().look("header");
  }

  static void begin(WindowAssembly desk) {
    place(desk);
    Scene.press(desk.writePlace().component(), "write-new");
    Scene.type(desk.writePlace().component(), "write-new-title", "Grease the gooseneck");
  }

  static void delete(WindowAssembly desk) {
    place(desk);
    Scene.press(desk.writePlace().component(), "write-delete");
  }

  /** What was typed, beside what the file holds. */
  static void both(WindowAssembly desk) {
    OpenPage page = page(desk);
    String plain = page.text().plain();
    desk.writePlace().model().replace(page, plain.replaceFirst("minutes: \\d+", "minutes: 45"));
    desk.writePlace().model().versions().show(page, page.saved());
  }
}
