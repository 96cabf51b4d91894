/** Which alternate of a quote the client took, and pictures of the shop's head, each once by its hash. */
export const quoteTables = `
  ALTER TABLE quotes ADD COLUMN chosen TEXT;

  CREATE TABLE logos (
    sha256 TEXT PRIMARY KEY NOT NULL,
    media_type TEXT NOT NULL CHECK (media_type IN ('image/png', 'image/jpeg')),
    width_px INTEGER NOT NULL,
    height_px INTEGER NOT NULL,
    bytes BLOB NOT NULL
  ) STRICT;
`;
