-- Which works have impossible bars: one row for each part that has any, by work (the folder of its file).
-- For DuckDB. Run it where the catalogue's lines lie in ./catalogue, or set the variable to another pattern first:
--   SET VARIABLE lines = '/srv/catalogue/*.jsonl';
WITH lines AS (
  SELECT file, findings, CAST(regexp_extract(filename, '(\d+)\.jsonl$', 1) AS INTEGER) AS share
  FROM read_json(
    coalesce(getvariable('lines'), 'catalogue/*.jsonl'),
    format = 'newline_delimited',
    filename = true,
    columns = {file: 'VARCHAR', findings: 'STRUCT(id VARCHAR, severity VARCHAR, part VARCHAR, measure VARCHAR)[]'}
  )
),
-- A part that changed was checked again, in a later share.
latest AS (
  SELECT file, findings FROM lines QUALIFY row_number() OVER (PARTITION BY file ORDER BY share DESC) = 1
),
bars AS (
  SELECT
    regexp_extract(file, '([^/]+)/[^/]+$', 1) AS work,
    file,
    findings[place].part AS part,
    findings[place].measure AS bar,
    min(place) AS first_place,
    count(*) AS notes
  FROM latest, unnest(range(1, len(findings) + 1)) AS places(place)
  WHERE findings[place].severity = 'impossible'
  GROUP BY ALL
)
SELECT
  work,
  part,
  string_agg(bar, ', ' ORDER BY first_place) AS bars,
  CAST(sum(notes) AS INTEGER) AS findings,
  file
FROM bars
GROUP BY work, part, file
ORDER BY work, file, part;
