package org.tidegate.message;

import java.util.List;
import java.util.Set;
import org.apache.tika.Tika;

/** Media types by content; the name only refines what the bytes show. */
final class FileTypes {

    private static final Tika TIKA = new Tika();

    private static final Set<String> ACTIVE = Set.of(
            "application/x-msdownload",
            "application/x-dosexec",
            "application/x-executable",
            "application/x-elf",
            "application/x-sharedlib",
            "application/x-mach-o",
            "application/x-msi",
            "application/x-ms-installer",
            "application/x-sh",
            "application/x-bat",
            "application/javascript",
            "text/javascript",
            "application/x-powershell",
            "application/x-ms-shortcut",
            "application/java-vm",
            "application/vnd.android.package-archive",
            "application/vnd.ms-word.document.macroenabled.12",
            "application/vnd.ms-excel.sheet.macroenabled.12",
            "application/vnd.ms-powerpoint.presentation.macroenabled.12");

    private static final List<String> ACTIVE_ENDINGS = List.of(
            ".exe", ".com", ".scr", ".bat", ".cmd", ".js", ".jse", ".vbs", ".vbe", ".ps1", ".wsf", ".hta", ".lnk",
            ".jar", ".msi", ".docm", ".xlsm", ".pptm", ".apk", ".sh");

    private FileTypes() {}

    static String detect(byte[] content, String name) {
        return TIKA.detect(content, name);
    }

    static boolean isActive(String type, String lowerName) {
        return ACTIVE.contains(type)
                || type.startsWith("application/x-msdownload")
                || ACTIVE_ENDINGS.stream().anyMatch(lowerName::endsWith);
    }
}
