/**
 * Files that people write, read strictly: whatever is missing, unknown or impossible is refused as
 * a {@link boreledger.drivers.file.FileProblem} with its place. No argument or answer is null
 * unless it says so.
 */
package boreledger.drivers.file;
