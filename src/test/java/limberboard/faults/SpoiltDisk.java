package limberboard.faults;

import java.util.List;

/** How a disk is spoilt for one program, as the lines of a shell in which {@code $@} is it. */
enum SpoiltDisk {
  /** No file may become larger than so much, on any system with a shell. */
  NO_LARGE_FILES("ulimit -f 48; exec \"$@\"", "bash"),

  /** A disk in memory with little room left; what is on it is taken back afterwards. */
  FULL(
      "mount -t tmpfs -o size=24m none /mnt && cp -a \"$DISK\"/. /mnt"
          + " && { dd if=/dev/zero of=/mnt/filler bs=4k 2>/dev/null;"
          + " truncate -s -98304 /mnt/filler; mount --bind /mnt \"$DISK\"; \"$@\";"
          + " rm /mnt/filler; umount \"$DISK\"; cp -a /mnt/. \"$DISK\"; }",
      "unshare",
      "-rm",
      "bash"),

  /** A disk that may only be read. */
  READ_ONLY(
      "mount --bind \"$DISK\" \"$DISK\" && mount -o remount,bind,ro \"$DISK\" && \"$@\"",
      "unshare",
      "-rm",
      "bash");

  private final String script;
  private final List<String> shell;

  SpoiltDisk(String script, String... shell) {
    this.script = script;
    this.shell = List.of(shell);
  }

  /** What calls the script. */
  List<String> shell() {
    return shell;
  }

  /** The script. */
  String script() {
    return script;
  }
}
