/**
 * What is done with whole files, one class a job: fill, check, make, renew, compare, take, show
 * sheets, put back. Files go in; a file and a {@link shaftwright.jobs.Journal} of lines in a
 * builder's words come out. Terminal and window both run these, so both say the same.
 */
package shaftwright.jobs;
