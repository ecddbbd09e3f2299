package org.twinbar.exchange.datapackage;

/**
 * How much of a stranger's package is taken.
 *
 * @param files most files in it
 * @param fileBytes most bytes of one file
 * @param allBytes most bytes of all together
 * @param ratio most bytes that come out of each byte of a zip, once they are more than a few
 * @param descriptorBytes most bytes of its descriptor
 * @param rows most rows of a table
 */
record Limits(int files, long fileBytes, long allBytes, int ratio, int descriptorBytes, int rows) {

    /**
     * A curve of 5 million rows has about 150 MB. Curves shrink to a quarter or a tenth, a file of
     * zeros to a thousandth; between the two lies the ratio. Common practice, no source.
     */
    static final Limits USUAL = new Limits(20_000, 512L << 20, 4L << 30, 200, 32 << 20, 2_000_000);

    /** Below so many bytes a zip may be as dense as it likes. */
    static final long DENSE_UP_TO = 16L << 20;
}
