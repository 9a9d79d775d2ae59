package org.tidegate.message;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.tika.detect.DefaultDetector;
import org.apache.tika.detect.Detector;
import org.apache.tika.io.TikaInputStream;
import org.apache.tika.metadata.Metadata;

/** What the bytes of a file say it is; never what its name or sender claims. */
final class FileTypes {

    private static final Detector DETECTOR = new DefaultDetector();

    private static final List<String> PROGRAMS = List.of(
            "application/x-msdownload",
            "application/x-dosexec",
            "application/vnd.microsoft.portable-executable",
            "application/x-elf",
            "application/x-executable",
            "application/x-sharedlib",
            "application/x-mach-o",
            "application/java-archive",
            "application/java-vm",
            "application/vnd.android.package-archive",
            "application/x-sh",
            "application/x-msi",
            "application/x-ms-installer",
            "application/x-ms-shortcut",
            "application/vnd.ms-htmlhelp",
            "application/javascript",
            "text/javascript",
            "application/x-bat",
            "text/x-vbscript",
            "text/x-python",
            "text/x-perl");

    private static final List<String> PROGRAM_NAMES = List.of(
            ".exe", ".com", ".scr", ".pif", ".bat", ".cmd", ".ps1", ".vbs", ".vbe", ".js", ".jse", ".wsf", ".wsh",
            ".hta", ".msi", ".msp", ".jar", ".lnk", ".cpl", ".dll", ".apk", ".sh", ".reg", ".chm", ".iso", ".docm",
            ".xlsm", ".pptm", ".dotm", ".xltm");

    private FileTypes() {}

    /** Media type by content, lower case; {@code application/octet-stream} where nothing is recognised. */
    static String detect(byte[] content) {
        try (TikaInputStream stream = TikaInputStream.get(content)) {
            return DETECTOR.detect(stream, new Metadata())
                    .getBaseType()
                    .toString()
                    .toLowerCase(Locale.ROOT);
        } catch (IOException | RuntimeException e) {
            return "application/octet-stream";
        }
    }

    /** Whether the file could run: told by its content, and by a name under which a desktop would run it. */
    static boolean isActive(String type, Optional<String> fileName) {
        String name = fileName.orElse("").toLowerCase(Locale.ROOT);
        return PROGRAMS.contains(type)
                || type.contains("macroenabled")
                || PROGRAM_NAMES.stream().anyMatch(name::endsWith);
    }
}
