package limberboard.cli;

import java.io.PrintWriter;
import java.util.Locale;
import limberboard.library.file.Controls;

/**
 * What a command prints, in the one place through which all of it goes: control characters are made
 * visible, so that no page can steer a terminal, and numbers have plain digits in every locale.
 */
final class Printed extends PrintWriter {
  private Printed(PrintWriter to, boolean atOnce) {
    super(to, atOnce);
  }

  /**
   * A writer that prints to another.
   *
   * @param atOnce whether each line is passed on at once
   */
  static PrintWriter to(PrintWriter to, boolean atOnce) {
    return to instanceof Printed ? to : new Printed(to, atOnce);
  }

  @Override
  public void write(int c) {
    super.write(Controls.visible((char) c));
  }

  @Override
  public void write(char[] characters, int from, int length) {
    write(new String(characters, from, length), 0, length);
  }

  @Override
  public void write(String text, int from, int length) {
    String visible = Controls.visible(text.substring(from, from + length));
    super.write(visible, 0, visible.length());
  }

  @Override
  public PrintWriter format(String format, Object... arguments) {
    return super.format(Locale.ROOT, format, arguments);
  }
}
