/**
 * What is done with an open book: {@link shaftwright.filling.Filling} reads, computes and writes it
 * in one flow, checks it, and takes over what stands in another. It knows nothing of files.
 */
package shaftwright.filling;
