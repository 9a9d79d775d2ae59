/**
 * Keys, and the encrypted raw messages. {@link org.tidegate.vault.MessageKey} gives each message a random key, salt and blob
 * name; {@link org.tidegate.vault.Sealing} seals bytes under such a key; {@link org.tidegate.vault.MasterKey} wraps the key for
 * the store. Sealed bytes go to a {@link org.tidegate.vault.BlobStore}: files ({@link org.tidegate.vault.DurableFiles}: write,
 * fsync, rename, fsync the folder) or rows. Destroying key and salt forgets a message, wherever copies of its blob lie.
 * {@link org.tidegate.vault.FileLayer} is what lies below, so that tests can take the power away.
 */
@NullMarked
package org.tidegate.vault;

import org.jspecify.annotations.NullMarked;
