package org.tidegate.mailbox;

import java.util.List;

/** Writes UIDs as an IMAP sequence set (RFC 3501 §9), ranges where they follow each other. */
final class UidSet {

    private UidSet() {}

    /** @param uids ascending, not empty */
    static String of(List<Long> uids) {
        StringBuilder set = new StringBuilder();
        int i = 0;
        while (i < uids.size()) {
            int j = i;
            while (j + 1 < uids.size() && uids.get(j + 1) == uids.get(j) + 1) {
                j++;
            }
            set.append(set.isEmpty() ? "" : ",").append(uids.get(i));
            if (j > i) {
                set.append(':').append(uids.get(j));
            }
            i = j + 1;
        }
        return set.toString();
    }
}
