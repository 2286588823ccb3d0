/** The job as it stands over every sheet: id, site and date, as far as they are filled in; a formula without "=". */
export const JOB_IN_WORDS =
  'IF(job_id&job_site&job_date="","Job not filled in yet",IF(job_id="","",job_id&", ")&IF(job_site="","",job_site&", ")&' +
  'IF(job_date="","no date",TEXT(job_date,"yyyy-mm-dd")))';
