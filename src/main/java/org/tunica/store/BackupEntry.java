package org.tunica.store;

/**
 * One file of a backup: the rows of a table, one JSON object a line.
 *
 * @param rows how many
 * @param sha256 digest of its bytes, in hexadecimal digits
 */
record BackupEntry(String name, long rows, String sha256) {
    static final String MANIFEST = "manifest.json";

    static String nameOf(Table table) {
        return table.name() + ".jsonl";
    }
}
